// A thread begins without the hooks of the one that starts it: tsx lets it run the TypeScript of lib/ too.
import { register } from "tsx/esm/api";

register();
await import("./site-thread-work.ts");
