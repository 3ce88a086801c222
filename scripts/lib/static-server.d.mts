export function fileFor(folder: string, url: string): string | undefined;
export function serve(
  folder: string,
  options?: { readonly port?: number; readonly tries?: number },
): Promise<{ readonly address: string; readonly stop: () => Promise<void> }>;
