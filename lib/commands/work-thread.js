// Node begins a thread with this file where the program runs from its sources, which no bundle was made of.
import { register } from "tsx/esm/api";

register();
await import("../site/work-thread.ts");
