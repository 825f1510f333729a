/** Whether this process runs from packed code (see start.js) or from the sources themselves, as tests do. */

/** The folder of the packed code, with a separator at its end; put in by whoever packs. */
declare const packedFolder: string | undefined;

const folder = typeof packedFolder === "string" ? packedFolder : undefined;

/**
 * Where code stands that is started by itself, and how Node is told to read it.
 *
 * @param source  the source's path from the project's root
 * @param project the project's root, with a separator at its end
 */
export function startable(source: string, project: string): { readonly path: string; readonly isPacked: boolean } {
  if (folder === undefined) return { path: `${project}${source}`, isPacked: false };
  return { path: `${folder}${source.replace(/\.tsx?$/, ".js")}`, isPacked: true };
}
