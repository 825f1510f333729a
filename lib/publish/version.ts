/** Versions that results carry. The tool's version follows package.json; a test holds the two together. */
export const toolVersion = "0.1.0";

/** Goes up when the same inputs can give another figure or finding; docs/method-changes.md says which and by how much. */
export const methodVersion = "2026.2";
