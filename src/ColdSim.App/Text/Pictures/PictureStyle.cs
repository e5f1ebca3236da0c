namespace ColdSim.App.Text.Pictures;

/// <summary>The colours and strokes of pictures: a recorder's paper and pens, by day and by night.</summary>
internal static class PictureStyle
{
    /// <summary>Paper, ink and pens on light ground.</summary>
    public const string Light = "--paper:#fbfaf5;--ink:#1d2528;--soft:#566065;--grid:#d5dfd8;--line:#8a9b94;--pen0:#14507a;--pen1:#a2321d;--pen2:#5c5a12;--pen3:#6a3d86;--harm:#a2321d;";

    /// <summary>The same on dark ground.</summary>
    public const string Dark = "--paper:#12171a;--ink:#e8e6de;--soft:#a9b4b3;--grid:#263230;--line:#61726c;--pen0:#8fc6ee;--pen1:#f39a84;--pen2:#d3cf7c;--pen3:#cdaae6;--harm:#f39a84;";

    /// <summary>The pictures' own rules.</summary>
    public const string Rules = """
        .picture{font:11px/1 "DejaVu Sans Condensed","Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif;fill:var(--ink)}
        .picture .head{font-size:15px;font-weight:600}
        .picture .name{font-weight:700}
        .picture .frame{fill:none;stroke:var(--line)}
        .picture .grid{stroke:var(--grid)}
        .picture .three{stroke:var(--line);stroke-opacity:.45}
        .picture .day{stroke:var(--line)}
        .picture .scale{fill:var(--soft);text-anchor:end}
        .picture .right{text-anchor:start}
        .picture .clock,.picture .mark,.picture .point{fill:var(--soft);text-anchor:middle}
        .picture .mark{fill:var(--ink)}
        .picture .point{font-size:14px;font-weight:700}
        .picture .mark.grave{font-weight:700;fill:var(--harm)}
        .picture .level{stroke:var(--soft);stroke-dasharray:1 3}
        .picture .words{fill:var(--soft);font-size:10px}
        .picture path,.picture .thin{fill:none;stroke-width:1.6;vector-effect:non-scaling-stroke;stroke-linejoin:round}
        .picture .thin{stroke-width:1.2}
        .picture .dashes{stroke-dasharray:6 3}
        .picture .dots{stroke-dasharray:1.5 3}
        .picture .c0{stroke:var(--pen0)}
        .picture .c1{stroke:var(--pen1)}
        .picture .c2{stroke:var(--pen2)}
        .picture .c3{stroke:var(--pen3)}
        .picture .k0{fill:var(--pen0);font-weight:700}
        .picture .k1{fill:var(--pen1);font-weight:700}
        .picture .k2{fill:var(--pen2);font-weight:700}
        .picture .k3{fill:var(--pen3);font-weight:700}
        .picture .band{fill:var(--pen0);fill-opacity:.22;stroke:none}
        .picture .harm{fill:var(--harm);fill-opacity:.28;stroke:var(--harm);stroke-width:.6}
        .picture .short{fill:var(--harm)}
        .picture line.grave{stroke:var(--harm);stroke-dasharray:2 3}
        .picture .read{fill:var(--paper);stroke:var(--ink);stroke-width:1.5}
        .picture .kread{font-weight:700}
        .picture .kband{fill:var(--pen0)}
        .picture .kharm,.picture .kshort{fill:var(--harm)}
        .picture .paper{fill:var(--paper)}
        """;

    /// <summary>For a file of its own.</summary>
    public const string Alone = "\nsvg{" + Light + "}\n@media (prefers-color-scheme:dark){svg{" + Dark + "}}\n" + Rules + "\n";
}
