using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ColdSim.Tests.App.Reports;
using PuppeteerSharp;
using PuppeteerSharp.Media;
using Snapshooter;
using Snapshooter.Xunit;
using Xunit;

namespace ColdSim.Tests.App.Browser;

/// <summary>The report of every demo in a real browser: on a phone and on a desk, by day and by night, with and without script, and on paper.</summary>
[Trait("Category", "Browser")]
public sealed partial class ReportInBrowserTests(Chromium browser) : IClassFixture<Chromium>
{
    private const int Phone = 360, Desk = 1280;

    public static TheoryData<string> Demos => ReportFiguresTests.Demos;

    [BrowserTheory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Demos))]
    public async Task A_page_says_and_asks_nothing_fits_its_window_and_can_be_read(string demo)
    {
        foreach (int width in (int[])[Phone, Desk])
        {
            await using OpenedPage page = await browser.OpenAsync(ReportPage.Of(demo), width, dark: width == Desk);
            Assert.Empty(await page.Page.EvaluateFunctionAsync<string[]>(PageChecks.Overflow));
            Assert.Empty(await page.Page.EvaluateFunctionAsync<string[]>(PageChecks.Contrast));
            Assert.Empty(page.Said);
            Assert.StartsWith("file://", Assert.Single(page.Requests), StringComparison.Ordinal);
        }
    }

    [BrowserTheory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Demos))]
    public async Task On_paper_a_night_takes_a_page_and_the_rest_at_most_two(string demo)
    {
        ReportPage report = ReportPage.Of(demo);
        await using OpenedPage page = await browser.OpenAsync(report, Desk, dark: true);
        int nights = report.Pictures.Count();
        foreach (PaperFormat paper in (PaperFormat[])[PaperFormat.A4, PaperFormat.Letter])
            Assert.InRange(await PagesAsync(page, new PdfOptions { Format = paper, PreferCSSPageSize = false, PrintBackground = true }), nights + 1, nights + 2);
    }

    [BrowserFact]
    [Trait("Category", "Slow")]
    public async Task Limits_and_chance_fit_and_can_be_read_too()
    {
        foreach (int width in (int[])[Phone, Desk])
        {
            await using OpenedPage page = await browser.OpenAsync(ReportPage.Of("cold-snap.toml", "--with", "limits,chance", "--members", "20"), width);
            Assert.Empty(await page.Page.EvaluateFunctionAsync<string[]>(PageChecks.Overflow));
            Assert.Empty(await page.Page.EvaluateFunctionAsync<string[]>(PageChecks.Contrast));
            Assert.Empty(page.Said);
        }
    }

    [BrowserFact]
    [Trait("Category", "Slow")]
    public async Task A_card_is_one_page_of_A5()
    {
        await using OpenedPage page = await browser.OpenAsync(ReportPage.Of("cold-snap.toml", "--only", "limits", "--page", "a5"), Phone);
        Assert.Empty(await page.Page.EvaluateFunctionAsync<string[]>(PageChecks.Overflow));
        Assert.Equal(1, await PagesAsync(page, new PdfOptions { PreferCSSPageSize = true }));
    }

    [BrowserFact]
    public async Task The_script_folds_what_is_long_and_printing_unfolds_it()
    {
        await using OpenedPage page = await browser.OpenAsync(ReportPage.Of("cold-snap.toml"), Desk);
        Assert.Equal(0, await page.Page.EvaluateExpressionAsync<int>("document.querySelectorAll('details[open]').length"));
        await page.Page.EvaluateExpressionAsync("dispatchEvent(new Event('beforeprint'))");
        Assert.True(await page.Page.EvaluateExpressionAsync<bool>("document.querySelectorAll('details[open]').length === document.querySelectorAll('details').length"));
        await page.Page.EvaluateExpressionAsync("dispatchEvent(new Event('afterprint'))");
        Assert.Equal(0, await page.Page.EvaluateExpressionAsync<int>("document.querySelectorAll('details[open]').length"));
    }

    [BrowserFact]
    public async Task Without_a_script_everything_is_there_and_open()
    {
        await using OpenedPage page = await browser.OpenAsync(ReportPage.Of("cold-snap.toml"), Phone, script: false);
        await page.Page.SetJavaScriptEnabledAsync(true);
        Assert.True(await page.Page.EvaluateExpressionAsync<bool>("[...document.querySelectorAll('details')].every(d => d.open && d.offsetHeight > 60)"));
    }

    [BrowserFact]
    public async Task Under_the_pointer_the_values_of_the_hour_are_read_off()
    {
        ReportPage report = ReportPage.Of("cold-snap.toml");
        await using OpenedPage page = await browser.OpenAsync(report, Desk);
        double[] at = await page.Page.EvaluateFunctionAsync<double[]>(
            "() => { const s = document.querySelector('#night-2 svg.picture'); s.scrollIntoView(); const r = s.getBoundingClientRect(); return [r.left, r.top, r.width]; }");

        // Noon and 16 hours are 04:00, when gas is short.
        await page.Page.Mouse.MoveAsync((decimal)(at[0] + at[2] * 16 / 24), (decimal)(at[1] + 60));
        string[] lines = await page.Page.EvaluateFunctionAsync<string[]>("() => [...document.querySelector('#night-2 .readout').children].map(c => c.textContent)");
        Dictionary<string, string> hour = report.Tables("The curves at each full hour").ElementAt(1)[16];
        Assert.Equal("Thu 14 Jan 04:00", hour["Time"]);
        Assert.Matches("^Thu (03:59|04:0[01])$", lines[0]);
        foreach ((string name, string heading) in ((string, string)[])[("inside", "Inside °F"), ("outside", "Outside °F"), ("liquid", "Liquid °F"), ("pressure", "Pressure psi"), ("propane", "Left lb")])
        {
            string line = Assert.Single(lines, l => l.StartsWith(name + " ", StringComparison.Ordinal));
            Assert.Equal(double.Parse(hour[heading], CultureInfo.InvariantCulture), double.Parse(line.Split(' ')[1], CultureInfo.InvariantCulture), 1.5);
        }

        await page.Page.Mouse.MoveAsync(1, 1);
        Assert.True(await page.Page.EvaluateExpressionAsync<bool>("document.querySelector('#night-2 .readout').hidden"));
    }

    [BrowserTheory]
    [InlineData(Phone)]
    [InlineData(Desk)]
    public async Task What_is_seen_is_in_its_order(int width)
    {
        await using OpenedPage page = await browser.OpenAsync(ReportPage.Of("cold-snap.toml"), width);
        Snapshot.Match(await page.Page.EvaluateFunctionAsync<string>(PageChecks.Seen), SnapshotNameExtension.Create(width));
    }

    private static async Task<int> PagesAsync(OpenedPage page, PdfOptions options)
        => PdfPage().Count(Encoding.Latin1.GetString(await page.Page.PdfDataAsync(options)));

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PdfPage();
}
