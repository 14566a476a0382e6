/** A probability as a percentage that does not claim too much: no 0 %, no 100 %. */
export function percentText(probability: number): string {
  if (probability < 0.01) return "<1 %";
  if (probability > 0.99) return ">99 %";
  return `${Math.round(probability * 100)} %`;
}
