using System.Globalization;
using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Markup;
using ColdSim.App.Text.Pictures;

namespace ColdSim.App.Text.Html;

/// <summary>A section of a page.</summary>
internal static class HtmlSection
{
    public static void Write(MarkupWriter to, DocumentSection section)
    {
        to.Start("section", section.StartsPage ? "page" : "part");
        to.With("id", section.Anchor).With("aria-labelledby", $"{section.Anchor}-title").Line();
        to.Start("h2").With("id", $"{section.Anchor}-title").Text(section.Title).End().Line();
        foreach (DocumentBlock block in section.Blocks)
            Write(to, block);
        to.End().Line();
    }

    private static void Write(MarkupWriter to, DocumentBlock block)
    {
        switch (block)
        {
            case ParagraphBlock paragraph:
                to.Start("p", ClassOf(paragraph.Kind)).Text(paragraph.Text).End().Line();
                break;
            case PointsBlock points:
                Points(to, points.Points);
                break;
            case ReadingsBlock readings:
                Readings(to, readings.Readings);
                break;
            case TableBlock table:
                Table(to, table);
                break;
            case PictureBlock picture:
                Picture(to, picture.Picture);
                break;
            case FoldedBlock folded:
                Folded(to, folded);
                break;
            default:
                throw new ArgumentException($"a {block.GetType().Name} cannot be written");
        }
    }

    private static string ClassOf(ParagraphKind kind) => kind switch
    {
        ParagraphKind.Verdict => "verdict",
        ParagraphKind.Note => "note",
        ParagraphKind.Caution => "caution",
        _ => "plain",
    };

    private static void Points(MarkupWriter to, IReadOnlyList<string> points)
    {
        to.Start("ul");
        foreach (string point in points)
            to.Element("li", point).Line();
        to.End().Line();
    }

    private static void Readings(MarkupWriter to, IReadOnlyList<Reading> readings)
    {
        to.Start("dl", "readings");
        foreach (Reading reading in readings)
            to.Start("div").Element("dt", reading.Label).Element("dd", reading.Value).End().Line();
        to.End().Line();
    }

    // A table that is wider than a phone is scrolled by itself, by keys too.
    private static void Table(MarkupWriter to, TableBlock table)
    {
        to.Start("div", "wide").With("role", "region").With("aria-label", table.Caption).With("tabindex", "0");
        to.Start("table").Element("caption", table.Caption).Line();
        to.Start("thead").Start("tr");
        foreach ((TextColumn column, string heading) in table.Grid.Columns.Zip(HeadingText.Of(table.Grid.Columns)))
            to.Start("th", column.Left ? "left" : "number").With("scope", "col").Text(heading).End();
        to.End().End().Line().Start("tbody").Line();
        foreach (IReadOnlyList<string> row in table.Grid.Rows)
        {
            to.Start("tr");
            for (int i = 0; i < row.Count; i++)
            {
                string side = table.Grid.Columns[i].Left ? "left" : "number";
                if (i == 0)
                    to.Start("th", side).With("scope", "row").Text(row[i].Trim()).End();
                else
                    to.Start("td", side).Text(row[i].Trim()).End();
            }

            to.End().Line();
        }

        to.End().End().End().Line();
    }

    private static void Picture(MarkupWriter to, IPicture picture)
    {
        to.Start("figure").Line();
        to.Start("svg", "picture").With("role", "img").With("aria-label", $"{picture.Title}. {picture.Description}");
        to.With("height", picture.Height).With("data-name", picture.Name);
        if (picture is StripPicture strip)
            to.With("data-start", strip.Start.ToString("s", CultureInfo.InvariantCulture)).With("data-minutes", strip.Minutes);
        to.Line();
        picture.Draw(to, PictureFrame.Fluid);
        to.End().Line().End().Line();
    }

    private static void Folded(MarkupWriter to, FoldedBlock folded)
    {
        to.Start("details", folded.OnPaper ? "long" : "long screen").With("open", "open").Element("summary", folded.Title).Line();
        foreach (DocumentBlock block in folded.Blocks)
            Write(to, block);
        to.End().Line();
    }
}
