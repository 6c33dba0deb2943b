/** The loops by which a drawing shows fibre: one line that swings up and down and crosses itself at top and bottom. */
export function insulationPath(x: number, y: number, width: number, height: number): string {
  const pitch = Math.max(5, Math.min(22, 0.36 * height));
  const loops = Math.max(1, Math.round(width / pitch));
  const step = width / loops;
  const top = y + 0.5;
  const bottom = y + height - 0.5;
  const lean = 0.9 * step;
  let d = `M${round(x)} ${round(bottom)}`;
  for (let i = 0; i < loops; i++) {
    const left = x + i * step;
    const middle = left + step / 2;
    const right = left + step;
    d +=
      `C${round(left + lean)} ${round(bottom)} ${round(middle + lean)} ${round(top)} ${round(middle)} ${round(top)}` +
      `C${round(middle - lean)} ${round(top)} ${round(right - lean)} ${round(bottom)} ${round(right)} ${round(bottom)}`;
  }
  return d;
}

function round(value: number): string {
  return value.toFixed(1);
}
