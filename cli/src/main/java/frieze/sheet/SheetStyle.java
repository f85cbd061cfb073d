package frieze.sheet;

/** How the setup sheet looks on a screen and on paper. */
final class SheetStyle {
  static final String CSS =
      """

      @page { margin: 12mm 13mm 13mm 13mm }
      * { box-sizing: border-box }
      html { -webkit-print-color-adjust: exact; print-color-adjust: exact }
      body { margin: 0; background: #e9e7e2; color: #16181b;
        font: 9.4pt/1.38 "Helvetica Neue", Helvetica, Arial, "Liberation Sans", sans-serif }
      .panel { width: 184mm; margin: 8mm auto; padding: 0 }
      @media screen { .panel { width: 210mm; padding: 13mm; background: #fff;
        box-shadow: 0 1px 6px rgba(0,0,0,.25) } }
      @media print { body { background: #fff } .panel { margin: 0 auto; break-after: page }
        .panel:last-child { break-after: auto } }
      h1 { font-size: 21pt; line-height: 1.1; margin: 0; font-weight: 700; letter-spacing: -.01em }
      h2 { font-size: 10.5pt; margin: 3.8mm 0 1.2mm; padding-top: 1.2mm; border-top: .5mm solid #16181b;
        font-weight: 700; break-after: avoid }
      h2 small { font-weight: 400; font-size: 8.6pt; color: #55585c; margin-left: 2mm }
      p { margin: 0 0 1.5mm }
      .job { color: #55585c; margin: 0 0 .5mm; font-size: 9.4pt }
      header { display: flex; justify-content: space-between; align-items: flex-end; gap: 6mm }
      .verdict { border: .5mm solid #16181b; padding: 1.2mm 3mm; font-weight: 700; text-align: center;
        font-size: 10.5pt; white-space: nowrap }
      .verdict small { display: block; font-weight: 400; font-size: 8.2pt }
      .verdict.bad { border-width: 1.2mm; border-style: double }
      .facts { display: grid; grid-template-columns: repeat(4, 1fr); margin: 3.5mm 0 4mm;
        border: .25mm solid #16181b }
      .facts div { padding: 1.1mm 2.2mm 1.4mm; border-right: .25mm solid #b9b7b1 }
      .facts div:last-child { border-right: 0 }
      .facts b { display: block; font-size: 7.4pt; font-weight: 400; color: #55585c }
      figure { margin: 0 0 2.4mm; break-inside: avoid }
      figure .pic { border: .25mm solid #16181b }
      figure img { display: block; width: 100% }
      figure svg { display: block; max-width: 100%; height: auto }
      figcaption { font-size: 7.8pt; color: #55585c; margin-top: .8mm }
      .legend { display: flex; flex-wrap: wrap; gap: .6mm 5mm; font-size: 8pt; margin: 0 0 2mm 8mm }
      .legend i { display: inline-block; width: 6mm; height: 3mm; margin-right: 1.4mm;
        vertical-align: -.4mm; border: .25mm solid #16181b }
      .scale { display: flex; align-items: center; gap: 2mm; font-size: 7.8pt; margin-top: 1mm }
      .scale span.bar { flex: 0 0 60mm; height: 3mm; border: .25mm solid #16181b }
      table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums;
        break-inside: auto }
      table.whole { break-inside: avoid }
      th { text-align: left; font-weight: 400; font-size: 7.6pt; color: #55585c;
        border-bottom: .25mm solid #16181b; padding: 0 2mm .6mm 0; vertical-align: bottom }
      td { border-bottom: .2mm solid #c9c7c1; padding: .7mm 2mm .7mm 0; vertical-align: top }
      tr { break-inside: avoid }
      td.n, th.n { text-align: right }
      .load { display: grid; grid-template-columns: 1fr 92mm; gap: 5mm; break-inside: avoid }
      .load ol, ol.tick { list-style: none; margin: 0; padding: 0 }
      .tick li, .load li { padding-left: 6.5mm; position: relative; margin-bottom: 1.3mm }
      .tick li::before, .load li::before { content: ""; position: absolute; left: 0; top: .55mm;
        width: 3.3mm; height: 3.3mm; border: .3mm solid #16181b }
      .strip { display: flex; flex-wrap: wrap; gap: 2.2mm 0; margin: 1mm 0 2mm; break-inside: avoid }
      .step { display: flex; flex: 1 1 41mm; border: .35mm solid #16181b; margin-right: 4.6mm;
        position: relative; min-height: 17mm }
      .step::after { content: "\\25B6"; position: absolute; right: -3.9mm; top: 50%;
        transform: translateY(-50%); font-size: 8pt }
      .step:last-child::after { content: none }
      .step:last-child { margin-right: 0 }
      .step .no { flex: 0 0 7.5mm; background: #16181b; color: #fff; font-size: 15pt; font-weight: 700;
        display: flex; align-items: center; justify-content: center }
      .step .what { padding: 1mm 1.6mm 1.2mm; font-size: 8.2pt; line-height: 1.32 }
      code { font-family: "DejaVu Sans Mono", Consolas, Menlo, monospace; font-size: .92em }
      .step code { font-weight: 700; font-size: 8.2pt }
      .warn { border: .35mm solid #16181b; border-left-width: 2mm; padding: .9mm 2.2mm; margin: 0 0 1.2mm;
        break-inside: avoid }
      .not { font-weight: 700 }
      .kind { font-weight: 700; font-size: 8pt; white-space: nowrap }
      .cols { columns: 2; column-gap: 6mm; font-size: 7.6pt; line-height: 1.25 }
      .cols li { break-inside: avoid; margin-bottom: .7mm }
      .cols ul { margin: 0; padding-left: 4mm }
      .block { margin-top: 5mm; break-inside: avoid; border: .5mm solid #16181b;
        display: grid; grid-template-columns: 2.2fr 1.3fr 1.3fr .8fr; font-size: 8.6pt }
      .block div { border-right: .25mm solid #16181b; border-bottom: .25mm solid #16181b;
        padding: .8mm 1.8mm 1mm; min-height: 9mm }
      .block div:nth-child(4n) { border-right: 0 }
      .block div:nth-last-child(-n+4) { border-bottom: 0 }
      .block b { display: block; font-weight: 400; font-size: 6.9pt; color: #55585c }
      """;

  private SheetStyle() {}
}
