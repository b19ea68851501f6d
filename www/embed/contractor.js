// What a contractor's own page does with the sizer: it hears when somebody asks, and here it only says so.
import { SizerFrame } from "./frame.js";

const homes = document.querySelector("#homes");
homes.addEventListener("airtally-ask", ({ detail }) => say("#asked", detail));

const frame = document.querySelector("iframe");
// The frame is told who we are, and so whom it may tell. It is loaded once: a second address while the first is on its way may be lost.
frame.src = `${frame.dataset.page}&host=${encodeURIComponent(location.origin)}`;
new SizerFrame(frame).addEventListener("ask", ({ detail }) => say("#framed-asked", detail));

function say(place, { result }) {
  const { rooms, levels, tubes } = result;
  document.querySelector(place).textContent =
    `We would now get a house of ${rooms.length} rooms, ${levels.normal.total.text} and ${tubes.count} tubes. Nothing was sent: this is a demonstration.`;
}
