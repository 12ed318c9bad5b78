/** What a step of a stage is called where its owner gave it no label: nothing where there is no other, else A, B, C… */
export function usualLabel(index: number, count: number): string {
  if (count === 1) return "";
  return index < 26 ? String.fromCharCode(65 + index) : String(index + 1);
}
