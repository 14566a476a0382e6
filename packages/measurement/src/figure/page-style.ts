// The look of a study's page: system fonts, light or dark as the reader has it, and black on white in print.

/** The style sheet. */
export const PAGE_STYLE: string = `
:root{color-scheme:light dark;font-family:system-ui,sans-serif;line-height:1.5}
body{margin:0;background:Canvas;color:CanvasText}
main{max-width:48rem;margin:0 auto;padding:1rem}
h1{font-size:1.6rem;line-height:1.25;overflow-wrap:anywhere}
h2{font-size:1.15rem;margin:2rem 0 .5rem}
p,li{max-width:42rem;overflow-wrap:anywhere}
.meaning{font-weight:600}
.note{font-size:.9rem}
figure{margin:0}
svg{display:block;max-width:100%;height:auto}
.scroll{overflow-x:auto}
table{border-collapse:collapse;font-size:.92rem;font-variant-numeric:tabular-nums}
caption{text-align:left;font-size:.9rem;padding:.3rem 0}
th,td{padding:.2rem .7rem .2rem 0;border-bottom:1px solid color-mix(in srgb,currentColor 25%,transparent);text-align:left;vertical-align:top}
th{font-weight:600}
tbody th{font-weight:400}
.number{text-align:right}
@media print{:root{color-scheme:light}main{max-width:none;padding:0}figure,tr,h2+.meaning{break-inside:avoid}h2{break-after:avoid}}
`;
