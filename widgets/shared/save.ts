/** Hands the reader a file made on the page. */
export const saveText = (text: string, name: string, type: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
