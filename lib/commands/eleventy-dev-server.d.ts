/** The part of the development server that we use; the package has no types of its own. */
declare module "@11ty/eleventy-dev-server" {
  type Server = {
    serve(port: number): void;
    ready(): Promise<void>;
    getPort(): number;
    reload(event: object): void;
    close(): Promise<void>;
  };
  const EleventyDevServer: { getServer(name: string, dir: string, options: object): Server };
  export default EleventyDevServer;
}
