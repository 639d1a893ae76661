// Node begins a thread with this file as it is; the thread then runs the same program as whoever began it.
import { program } from "./program.js";

const { workInThread } = await program();
await workInThread();
