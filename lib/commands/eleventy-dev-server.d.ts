/** The part of the development server that we use; the package has no types of its own. */
declare module "@11ty/eleventy-dev-server" {
  type Server = {
    serve(port: number): void;
    ready(): Promise<void>;
    /** Once it is ready: the address under a host's name. */
    getServerUrl(host: string): string;
    reload(event: object): void;
    close(): Promise<void>;
  };
  const EleventyDevServer: { getServer(name: string, dir: string, options: object): Server };
  export default EleventyDevServer;
}
