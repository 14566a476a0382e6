declare module "jstat" {
  const jstat: { readonly normal: { readonly cdf: (x: number, mean: number, sd: number) => number } };
  export default jstat;
}
declare module "js-quantities" {
  interface Quantity {
    readonly to: (unit: string) => { readonly scalar: number };
  }
  const quantity: (value: number, unit: string) => Quantity;
  export default quantity;
}
