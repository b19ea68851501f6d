// The same as the package itself, with the program inside: `start()` asks for no second file.
export * from "./index.js";
