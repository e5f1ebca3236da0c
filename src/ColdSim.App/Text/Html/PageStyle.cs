using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Pictures;

namespace ColdSim.App.Text.Html;

/// <summary>The style of a page: a logbook beside a recorder's paper; narrow and wide, by day and by night, on screen and on paper.</summary>
internal static class PageStyle
{
    private const string Screen = """
        *{box-sizing:border-box}
        html{color-scheme:light dark;-webkit-text-size-adjust:100%}
        body{margin:0 auto;max-width:62rem;padding:1rem 12px 3rem;background:var(--paper);color:var(--ink);
        font:16px/1.45 "DejaVu Sans Condensed","Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif;overflow-wrap:break-word}
        h1{font-size:1.5rem;line-height:1.2;margin:0 0 .25rem}
        h2{font-size:1.05rem;margin:0 0 .5rem;padding-top:.35rem;border-top:2px solid var(--ink)}
        section{margin:1.75rem 0 0}
        p{margin:.45rem 0;max-width:46rem}
        ul{margin:.3rem 0;padding-left:1.2rem;max-width:46rem}
        li{margin:.15rem 0}
        .setting,.note,footer{color:var(--soft)}
        .note{font-size:.875rem}
        .verdict{font-size:1.3rem;line-height:1.3;font-weight:700;text-wrap:balance}
        .caution{border-left:3px double var(--ink);padding-left:.6rem}
        nav ul{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.1rem 1.1rem;max-width:none;font-size:.875rem}
        nav a{display:inline-block;padding:.3rem 0}
        a{color:var(--pen0)}
        .readings{display:flex;flex-wrap:wrap;margin:.9rem 0;border-top:1px solid var(--line);border-bottom:1px solid var(--line)}
        .readings div{padding:.35rem .9rem;margin-left:-1px;border-left:1px solid var(--line)}
        .readings dt{font-size:.8rem;color:var(--soft)}
        .readings dd{margin:0;font-size:1.15rem;font-variant-numeric:tabular-nums}
        .wide{overflow-x:auto;margin:.6rem 0}
        table{border-collapse:collapse;font-size:.875rem;font-variant-numeric:tabular-nums}
        caption{text-align:left;color:var(--soft);padding:.15rem 0;font-size:.8rem}
        th,td{padding:.2rem .45rem;border-bottom:1px solid var(--grid);vertical-align:baseline}
        thead th{border-bottom:1px solid var(--line);vertical-align:bottom;font-size:.8rem;font-weight:600}
        tbody th{font-weight:400;white-space:nowrap}
        .left{text-align:left}
        .number{text-align:right}
        td.number{white-space:nowrap}
        figure{margin:.8rem 0;position:relative}
        svg.picture{display:block;overflow:visible;margin-left:46px;width:calc(100% - 86px);touch-action:pan-y}
        summary{cursor:pointer;padding:.4rem 0;color:var(--pen0)}
        .readout{position:absolute;z-index:1;top:0;max-width:15rem;padding:.35rem .5rem;background:var(--paper);border:1px solid var(--ink);font-size:.8rem;pointer-events:none}
        .readout b{display:block}
        .pointer{stroke:var(--ink)}
        :focus-visible{outline:2px solid var(--pen0);outline-offset:2px}
        @media (max-width:36rem){body{font-size:15px}.verdict{font-size:1.15rem}.picture .odd{display:none}th,td{padding:.2rem .3rem}table{font-size:.8rem}.picture .legend{font-size:10px}}
        """;

    // Paper has no folds, no links and no dark; a night takes a page.
    private const string OnPaper = """
        @media print{
        :root{--paper:#fff}
        body{max-width:none;padding:0;font-size:9.5pt;line-height:1.3}
        h1{font-size:15pt}.verdict{font-size:12.5pt}
        nav,.screen,.readout,summary{display:none}
        .page{break-before:page}
        section{margin-top:9pt}
        h2,caption,thead{break-after:avoid}
        figure,tr,li,.readings{break-inside:avoid}
        .wide{overflow:visible}
        table{font-size:7.5pt;line-height:1.2}thead th,caption{font-size:7pt}
        th,td{padding:.6pt 3.5pt}figure{margin:4pt 0}.wide{margin:4pt 0}
        .long ul,#cautions ul{columns:2;max-width:none;font-size:7.5pt;line-height:1.25;column-gap:14pt}
        .note{font-size:8pt}
        p,ul{max-width:none}
        details:not([open])::details-content{content-visibility:visible;block-size:auto}
        *{-webkit-print-color-adjust:exact;print-color-adjust:exact}
        }
        """;

    // A card is read at arm's length, and is one page.
    private const string Card = """
        @media print{.card{font-size:7.5pt;line-height:1.22}.card h1{font-size:11.5pt}.card h2{font-size:8.5pt;margin:0 0 2pt;padding-top:2pt}.card section{margin-top:5pt}
        .card table{font-size:7.5pt;width:100%}.card .note{font-size:6.5pt}.card p,.card ul{margin:2pt 0}.card li{margin:0}.card figure{margin:3pt 0}.card .page{break-before:auto}}
        """;

    /// <summary>The style of a page for a paper.</summary>
    public static string Of(Paper paper) => "\n:root{" + PictureStyle.Light + "}\n@media screen and (prefers-color-scheme:dark){:root{" + PictureStyle.Dark + "}}\n"
        + Screen + "\n" + PictureStyle.Rules + "\n" + OnPaper + "\n" + (paper == Paper.A5 ? Card + "\n" : "") + $"@page{{{Size(paper)}}}\n";

    private static string Size(Paper paper) => paper switch
    {
        Paper.A4 => "size:A4;margin:12mm",
        Paper.Letter => "size:letter;margin:12mm",
        Paper.A5 => "size:A5;margin:8mm",
        _ => "margin:12mm",
    };
}
