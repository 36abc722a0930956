/** Hands the reader a file made on the page. */
export const saveFile = (content: string | Uint8Array<ArrayBuffer>, name: string, type: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
