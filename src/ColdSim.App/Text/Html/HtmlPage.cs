using ColdSim.App.Text.Documents;
using ColdSim.App.Text.Markup;
using ColdSim.Files.Disk;

namespace ColdSim.App.Text.Html;

/// <summary>A report as one page of HTML that needs nothing beside it: style, pictures and script are in it.</summary>
internal static class HtmlPage
{
    private const string Generator = "<meta name=\"generator\" content=\"coldsim";

    /// <summary>The file, known by its generator.</summary>
    public static OutputKind Kind { get; } = new(
        "a report", text => text.StartsWith("<!DOCTYPE html>", StringComparison.Ordinal) && text.Contains(Generator, StringComparison.Ordinal));

    public static string Of(ReportDocument document, string version)
    {
        MarkupWriter to = new();
        to.Own("<!DOCTYPE html>").Line();
        to.Start("html").With("lang", "en").Line();
        Head(to, document, version);
        to.Start("body").With("class", document.Paper == Paper.A5 ? "card" : "report").Line();
        to.Start("header").Element("h1", document.Title).Line();
        to.Start("p", "setting").Text(document.Setting).End().End().Line();
        if (document.Sections.Count > Contents)
            Nav(to, document);
        to.Start("main").Line();
        foreach (DocumentSection section in document.Sections)
            HtmlSection.Write(to, section);
        to.End().Line();
        to.Start("footer").Element("p", document.Made).End().Line();
        to.Start("script").Own(PageScript.Text).End().Line();
        to.End().Line().End().Line();
        return to.ToString();
    }

    // A card of a few sections needs no list of them.
    private const int Contents = 5;

    private static void Head(MarkupWriter to, ReportDocument document, string version)
    {
        to.Start("head").Line();
        to.Start("meta").With("charset", "utf-8").Empty().Line();
        to.Start("meta").With("name", "generator").With("content", $"coldsim {version}").Empty().Line();
        to.Start("meta").With("name", "viewport").With("content", "width=device-width, initial-scale=1").Empty().Line();
        to.Start("meta").With("name", "color-scheme").With("content", "light dark").Empty().Line();
        to.Element("title", document.Title).Line();
        to.Start("style").Own(PageStyle.Of(document.Paper)).End().Line();
        to.End().Line();
    }

    private static void Nav(MarkupWriter to, ReportDocument document)
    {
        to.Start("nav").With("aria-label", "Contents").Start("ul");
        foreach (DocumentSection section in document.Sections)
            to.Start("li").Start("a").With("href", "#" + section.Anchor).Text(section.ShortTitle).End().End();
        to.End().End().Line();
    }
}
