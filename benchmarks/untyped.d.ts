declare module "jstat" {
  const jstat: {
    readonly mean: (values: readonly number[]) => number;
    readonly stdev: (values: readonly number[], isSample: boolean) => number;
    readonly normal: { readonly cdf: (x: number, mean: number, sd: number) => number };
    readonly studentt: { readonly cdf: (t: number, degrees: number) => number };
  };
  export default jstat;
}
declare module "js-quantities" {
  interface Quantity {
    readonly to: (unit: string) => { readonly scalar: number };
  }
  const quantity: (value: number, unit: string) => Quantity;
  export default quantity;
}
