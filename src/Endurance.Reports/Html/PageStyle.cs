namespace Endurance.Reports.Html;

/// <summary>How the page looks on a screen of any width and on A4 or Letter paper.</summary>
internal static class PageStyle
{
    /// <summary>Every text has a contrast of at least 4.5:1 on what is behind it (WCAG 2.2, 1.4.3).</summary>
    public const string Css = """
        *{box-sizing:border-box}
        html{font:16px/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif;color:#1b1f24;background:#fff;-webkit-text-size-adjust:100%}
        body{max-width:76rem;margin:0 auto;padding:1rem 1rem 4rem;overflow-wrap:anywhere}
        h1{font-size:1.8rem;line-height:1.2;margin:.5rem 0 1rem}
        h2{font-size:1.35rem;line-height:1.25;margin:2.6rem 0 .8rem;padding-top:.6rem;border-top:2px solid #1b1f24}
        h3{font-size:1.1rem;line-height:1.3;margin:1.8rem 0 .6rem}
        h4{font-size:1rem;line-height:1.3;margin:1.4rem 0 .4rem}
        p,li,dd{max-width:48rem}
        a{color:#0b4f8a}
        a:focus-visible,button:focus-visible,.scroll:focus-visible,svg:focus-visible{outline:3px solid #0b4f8a;outline-offset:2px}
        dl{display:grid;grid-template-columns:max-content 1fr;gap:.2rem 1rem;margin:0 0 1rem}
        dt{color:#4a525c}dd{margin:0}
        nav ol{columns:18rem;padding-left:1.6rem;margin:.4rem 0}
        .small{font-size:.875rem;color:#4a525c}
        .scroll{overflow-x:auto;margin:.8rem 0 1.4rem}
        table{border-collapse:collapse;font-size:.9rem;font-variant-numeric:tabular-nums}
        caption{text-align:left;font-weight:600;padding:.2rem 0 .4rem}
        th,td{border-bottom:1px solid #c9ced6;padding:.3rem .7rem .3rem .4rem;vertical-align:top;text-align:left;max-width:28rem;overflow-wrap:normal}
        thead th{border-bottom:2px solid #5a626d;vertical-align:bottom;font-weight:600;background:#f3f5f7}
        tbody th{font-weight:500}
        tbody th,td.words{overflow-wrap:break-word;min-width:5.5rem}
        .name{white-space:nowrap}.name wbr{display:none}
        th.number+th.words,td.number+td.words{padding-left:1.2rem}
        th.number,td.number{text-align:right}
        td.number{white-space:nowrap}
        td.good{background:#e3f3e7;color:#0b4d1e;font-weight:600}
        td.bad{background:#fbe4e6;color:#7d0d1c;font-weight:600}
        thead button{font:inherit;color:inherit;background:none;border:0;padding:0;text-align:inherit;cursor:pointer}
        thead button::after{content:"\a0\2195";color:#5a626d}
        th[aria-sort=ascending] button::after{content:"\a0\2191";color:#1b1f24}
        th[aria-sort=descending] button::after{content:"\a0\2193";color:#1b1f24}
        pre{font:.8rem/1.45 ui-monospace,SFMono-Regular,Menlo,Consolas,"DejaVu Sans Mono",monospace;background:#f3f5f7;padding:.8rem;overflow-x:auto;tab-size:4}
        code{font:.85em ui-monospace,SFMono-Regular,Menlo,Consolas,"DejaVu Sans Mono",monospace;overflow-wrap:anywhere}
        figure{margin:1rem 0 1.4rem}
        figcaption{font-weight:600;margin-bottom:.3rem}
        figure svg{display:block}
        .chart{width:100%;height:auto;max-width:60rem;touch-action:pan-y}
        .chart text{font-size:13px;fill:#1b1f24}
        .key{list-style:none;display:flex;flex-wrap:wrap;gap:.1rem 1.4rem;padding:0;margin:.3rem 0;font-size:.9rem}
        .key svg{display:inline-block;vertical-align:middle;margin-right:.4rem}
        .read{min-height:1.5em;margin:.2rem 0;font-size:.9rem;font-variant-numeric:tabular-nums}
        .marks{font-size:.875rem;margin:.3rem 0;padding-left:2rem}
        .diagram text{font-family:ui-monospace,SFMono-Regular,Menlo,Consolas,"DejaVu Sans Mono",monospace;font-size:12px;fill:#1b1f24}
        .diagram .bus{font-size:13px;font-weight:700}
        .watch{background:#eaf1f8;padding:.4rem .8rem;margin-bottom:1rem}.watch p{margin:.2rem 0}.watch.older{background:#fbe4e6}
        .fault{white-space:pre-wrap;border-left:4px solid #7d0d1c}
        .form{max-width:52rem}
        .form h2{margin-top:1.6rem}
        .form table{width:100%}
        .form th,.form td{border:1px solid #5a626d;height:1.9em}
        .form td:empty{min-width:5rem}
        @media (max-width:600px){html{font-size:15px}dl{grid-template-columns:1fr}dt{margin-top:.4rem}.chart{min-width:42rem}h1{font-size:1.5rem}
        .scroll{background:linear-gradient(90deg,#fff 30%,#fff0) 0/2.5rem 100% no-repeat local,linear-gradient(270deg,#fff 30%,#fff0) 100%/2.5rem 100% no-repeat local,linear-gradient(90deg,#1b1f2455,#1b1f2400) 0/.7rem 100% no-repeat,linear-gradient(270deg,#1b1f2455,#1b1f2400) 100%/.7rem 100% no-repeat}
        .name{white-space:normal}.name wbr{display:inline}table{font-size:.82rem}th,td{padding:.3rem .4rem}th:first-child{position:sticky;left:0;background:#fff}thead th:first-child{background:#f3f5f7}}
        @media print{@page{margin:14mm}@page wide{size:landscape}section:has(.wide)>:is(h2,figure,p){page:wide}html{font-size:9pt}body,.form{max-width:none;padding:0}p,li,dd{max-width:none}nav,.read,.screen{display:none}
        .scroll{overflow:visible}.short{break-inside:avoid}table{font-size:8pt;width:100%}th,td{padding:.12rem .3rem;max-width:none;min-width:0!important}th.long,td.long{overflow-wrap:anywhere}h3+p,h4+p{break-after:avoid}td.prose{min-width:13em!important}td.number{white-space:normal;min-width:4.7em!important}
        tr,figure,.key,h2,h3,h4,caption{break-inside:avoid}h2,h3,h4,caption,thead{break-after:avoid}thead{display:table-header-group}
        thead button{display:contents}thead button::after{content:""!important}figure svg.chart{max-width:165mm}figure svg.diagram{max-width:100%;max-height:235mm;height:auto}.wide svg.diagram{max-height:150mm}pre{white-space:pre-wrap;overflow-wrap:anywhere;background:none;border:1px solid #c9ced6}
        .form table{font-size:9pt}.form th,.form td{height:7mm}.form td:empty{min-width:18mm!important}.piece,.form ul{break-inside:avoid}
        td.good,td.bad,thead th{print-color-adjust:exact;-webkit-print-color-adjust:exact}a{color:inherit;text-decoration:none}}
        """;
}
