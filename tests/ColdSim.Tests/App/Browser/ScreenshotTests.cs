using System.Buffers.Binary;
using ColdSim.Tests.App.Reports;
using ColdSim.Tests.Docs;
using ColdSim.Tests.Files;
using PuppeteerSharp;
using PuppeteerSharp.Media;
using Xunit;

namespace ColdSim.Tests.App.Browser;

/// <summary>The two pictures of a report on its page in docs, taken in a real browser when <c>COLDSIM_WRITE_DOCS=1</c>.</summary>
/// <remarks>Pixels differ from browser to browser, so what is held is that they are there, as large as they are said to be, and shown.</remarks>
[Trait("Category", "Browser")]
public sealed class ScreenshotTests(Chromium browser) : IClassFixture<Chromium>
{
    [BrowserTheory]
    [InlineData("report-desk.png", 1280, 1400, false)]
    [InlineData("report-phone.png", 360, 780, true)]
    public async Task A_page_of_docs_shows_the_report(string name, int width, int height, bool dark)
    {
        string path = DocPage.PathOf(name);
        if (Environment.GetEnvironmentVariable(GeneratedPage.WriteVariable) == "1")
        {
            await using OpenedPage page = await browser.OpenAsync(ReportPage.Of("cold-snap.toml"), width, dark: dark);
            await page.Page.ScreenshotAsync(path, new ScreenshotOptions { Clip = new Clip { Width = width, Height = height } });
        }

        // The header of a PNG: width and height follow its first chunk's name.
        byte[] png = await File.ReadAllBytesAsync(path);
        Assert.Equal(width, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
        Assert.Equal(height, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
        Assert.InRange(png.Length, 10_000, 300_000);
        Assert.Contains($"({name})", string.Concat(DocPage.Lines("report.md")), StringComparison.Ordinal);
    }
}
