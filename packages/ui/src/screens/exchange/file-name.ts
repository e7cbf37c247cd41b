/** A title as the name of a file, on any system. */
export function fileName(title: string): string {
  const name = title
    .normalize("NFC")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "")
    .toLowerCase()
  return name === "" ? "workbook" : name.slice(0, 80)
}
