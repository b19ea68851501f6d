// Serves a folder for a person: node serve.mjs FOLDER [--port N] [--open].
import { spawn } from "node:child_process";
import { serve } from "./kit/server.mjs";

const [folder, ...rest] = process.argv.slice(2);
const port = rest.includes("--port") ? Number(rest[rest.indexOf("--port") + 1]) : 8750;
const { url } = await serve(folder, { port });
console.log(`The page as it ships: ${url} (Ctrl-C stops it)`);
if (rest.includes("--open")) open(url);

function open(address) {
  const [program, ...before] = { darwin: ["open"], win32: ["cmd", "/c", "start", ""] }[process.platform] ?? ["xdg-open"];
  spawn(program, [...before, address], { stdio: "ignore", detached: true })
    .on("error", () => console.log("No browser could be opened; follow the address above."))
    .unref();
}
