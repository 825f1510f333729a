/** What JSX becomes in a script: Preact's own function, which its renderer needs anyhow; the automatic runtime would come on top of it. */
export { Fragment, h } from "preact";
