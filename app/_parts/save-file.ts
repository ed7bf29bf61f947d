/** Hands a file to the browser to be saved. */
export function saveFile(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  // The browser takes the file up after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
