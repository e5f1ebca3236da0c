using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ColdSim.Tests.App.Commands;

namespace ColdSim.Tests.App.Reports;

/// <summary>A report's page, read as XML as any other program would.</summary>
internal sealed partial class ReportPage
{
    private static readonly ConcurrentDictionary<string, Lazy<ReportPage>> Pages = new(StringComparer.Ordinal);

    private readonly XElement _root;

    public ReportPage(string text)
    {
        Text = text;
        _root = XDocument.Parse(text.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal)).Root!;
    }

    public string Text { get; }

    /// <summary>The day on which reports of tests are made.</summary>
    public static TimeProvider Clock { get; } = new FixedClock(new DateTimeOffset(2027, 1, 11, 12, 0, 0, TimeSpan.FromHours(-7)));

    public IEnumerable<XElement> Sections => _root.Descendants("section");

    public IEnumerable<XElement> Pictures => _root.Descendants("svg").Where(s => (string?)s.Attribute("class") == "picture");

    /// <summary>The numbers of the answer by their labels.</summary>
    public Dictionary<string, string> Readings => _root.Descendants("dl").Single().Elements("div").ToDictionary(d => d.Element("dt")!.Value, d => d.Element("dd")!.Value);

    /// <summary>The report of a demo with some more words, worked out once for all tests.</summary>
    public static ReportPage Of(string demo, params string[] more) => Pages.GetOrAdd(string.Join(' ', [demo, .. more]), _ => new(() => Write(demo, more))).Value;

    /// <summary>The rows of a table, each cell by its column's heading.</summary>
    public IEnumerable<Dictionary<string, string>> Table(string caption) => Tables(caption).Single();

    /// <summary>The rows of every table of that caption.</summary>
    public IEnumerable<IReadOnlyList<Dictionary<string, string>>> Tables(string caption)
    {
        foreach (XElement table in _root.Descendants("table").Where(t => t.Element("caption")!.Value == caption))
        {
            string[] headings = [.. table.Element("thead")!.Descendants("th").Select(h => h.Value)];
            yield return [.. table.Element("tbody")!.Elements("tr").Select(r => headings.Zip(r.Elements()).ToDictionary(c => c.First, c => c.Second.Value))];
        }
    }

    /// <summary>The values of a picture's curve.</summary>
    public static IReadOnlyList<double> Curve(XElement picture, string name)
    {
        XElement path = picture.Descendants("path").Single(p => (string?)p.Attribute("data-name") == name);
        double low = Number(path, "data-low"), high = Number(path, "data-high");
        List<double> values = [];
        foreach (string part in ((string)path.Attribute("d")!).Split('M', StringSplitOptions.RemoveEmptyEntries))
        {
            double[] numbers = [.. Numbers().Matches(part).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
            double y = numbers[1];
            values.Add(high - y / 1000 * (high - low));
            for (int i = 3; i < numbers.Length; i += 2)
                values.Add(high - (y += numbers[i]) / 1000 * (high - low));
        }

        return values;
    }

    private static double Number(XElement element, string attribute) => double.Parse((string)element.Attribute(attribute)!, CultureInfo.InvariantCulture);

    private static ReportPage Write(string demo, string[] more)
    {
        Shell shell = new() { Clock = Clock };
        int code = shell.Run(["report", Shell.Demo(demo), "--out", "-", .. more]);
        return code == 0 ? new(shell.Out) : throw new InvalidOperationException($"{demo}: {shell.Error}");
    }

    [GeneratedRegex(@"-?\d+")]
    private static partial Regex Numbers();
}
