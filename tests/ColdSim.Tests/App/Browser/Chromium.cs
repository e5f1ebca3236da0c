using System.Globalization;
using ColdSim.Tests.App.Reports;
using PuppeteerSharp;
using PuppeteerSharp.Media;
using Xunit;

namespace ColdSim.Tests.App.Browser;

/// <summary>Chromium of this computer without a window, started once for all tests of a class.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string? Program = ((string[])["chromium", "chromium-browser"])
        .SelectMany(name => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(folder => Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);

    private readonly string _folder = Directory.CreateTempSubdirectory("coldsim-").FullName;
    private IBrowser? _browser;

    /// <summary>Why tests in a browser are skipped; null where there is one.</summary>
    public static string? Why => Program is null ? "there is no Chromium here; on Debian 'apt-get install chromium' brings it" : null;

    public async Task InitializeAsync()
    {
        if (Program is not null)
            _browser = await Puppeteer.LaunchAsync(new LaunchOptions { ExecutablePath = Program, Headless = true, Args = ["--no-sandbox", "--disable-gpu", "--hide-scrollbars"] });
    }

    public async Task DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>Opens a page from a file.</summary>
    internal async Task<OpenedPage> OpenAsync(ReportPage report, int width, bool dark = false, bool script = true)
    {
        string path = Path.Combine(_folder, string.Create(CultureInfo.InvariantCulture, $"{report.Text.GetHashCode(StringComparison.Ordinal):x8}.html"));
        if (!File.Exists(path))
            await File.WriteAllTextAsync(path, report.Text);
        OpenedPage page = new(await _browser!.NewPageAsync());
        await page.Page.SetJavaScriptEnabledAsync(script);
        await page.Page.SetViewportAsync(new ViewPortOptions { Width = width, Height = 800 });
        await page.Page.EmulateMediaFeaturesAsync([new MediaFeatureValue { MediaFeature = MediaFeature.PrefersColorScheme, Value = dark ? "dark" : "light" }]);
        await page.Page.GoToAsync("file://" + path);
        return page;
    }
}

/// <summary>A page that is open, and what it said and asked for meanwhile.</summary>
internal sealed class OpenedPage : IAsyncDisposable
{
    public OpenedPage(IPage page)
    {
        Page = page;
        page.Console += (_, e) => Said.Add($"{e.Message.Type}: {e.Message.Text}");
        page.PageError += (_, e) => Said.Add(e.Message);
        page.Error += (_, e) => Said.Add(e.Error);
        page.Request += (_, e) => Requests.Add(e.Request.Url);
    }

    public IPage Page { get; }

    /// <summary>Messages of the console and errors of the script.</summary>
    public List<string> Said { get; } = [];

    /// <summary>The addresses that it asked for, its own the first.</summary>
    public List<string> Requests { get; } = [];

    public async ValueTask DisposeAsync() => await Page.DisposeAsync();
}
