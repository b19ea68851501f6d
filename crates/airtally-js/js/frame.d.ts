// Types of the host's side of an <iframe> that shows embed.html.
import type { HouseFile, Issue, Tally } from "./index.js";
import type { Change, Fault } from "./sizer.js";

/** They come only when the frame's address names this page: `embed.html?host=https://example.org`. */
export interface FrameEvents {
  ready: CustomEvent<Record<string, never>>;
  change: CustomEvent<Change>;
  ask: CustomEvent<Change>;
  fault: CustomEvent<Fault>;
}

/**
 * Hears one frame and nobody else: only messages of that frame, from the origin it was loaded from, and no larger than
 * 256 kB. The frame gets as high as what it shows. Its events have the details of the element's events of those names.
 */
export class SizerFrame extends EventTarget {
  constructor(frame: HTMLIFrameElement);
  addEventListener<Type extends keyof FrameEvents>(type: Type, listener: (event: FrameEvents[Type]) => void, options?: boolean | AddEventListenerOptions): void;
  addEventListener(type: string, listener: EventListenerOrEventListenerObject | null, options?: boolean | AddEventListenerOptions): void;
  /** The house as a file. */
  take(): Promise<HouseFile>;
  /** Shows another house; rejected with the `code` of the refusal when it is none. */
  put(house: HouseFile): Promise<Tally>;
  /** What is doubtful, worst first. */
  check(): Promise<Issue[]>;
  /** Opens the browser's window for printing with the sizer alone; a sandboxed frame needs `allow-modals` for it. */
  print(): Promise<null>;
  /** Stops listening. */
  close(): void;
}
