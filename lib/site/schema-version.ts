/** Of the JSON that other programs read; CONTRACT.md says what counts it up. */
export const SCHEMA_VERSION = 1;
