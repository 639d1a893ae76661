// Node begins a thread with this file as it is; the thread then runs the program as that is by then.
import { program } from "./program.js";

const { workInThread } = await program("site-thread");
await workInThread();
