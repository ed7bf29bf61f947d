/** Hands a text made on this page to the browser as a file to save. */
export function saveAsFile(name: string, contentType: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: contentType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser takes the file up after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
