// Types of the host's side of an <iframe> that shows embed.html.
import type { HouseFile, Issue, Tally } from "./index.js";

/**
 * Hears one frame and nobody else: only messages of that frame, from the origin it was loaded from, and no larger than
 * 256 kB. The frame gets as high as what it shows.
 *
 * Its events are `ready`, `change`, `ask` and `fault`, with the details of the element's events of those names. They come only
 * when the frame's address names this page: `embed.html?host=https://example.org`.
 */
export class SizerFrame extends EventTarget {
  constructor(frame: HTMLIFrameElement);
  /** The house as a file. */
  take(): Promise<HouseFile>;
  /** Shows another house; rejected with the `code` of the refusal when it is none. */
  put(house: HouseFile): Promise<Tally>;
  /** What is doubtful, worst first. */
  check(): Promise<Issue[]>;
  /** Stops listening. */
  close(): void;
}
