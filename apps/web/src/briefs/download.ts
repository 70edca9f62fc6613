/** Saves a text as a file on the person's disk. */
export function download(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/yaml' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
