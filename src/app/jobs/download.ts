/** Hands a file to the browser to save. */
export function download(name: string, content: BlobPart, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers read the file only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
