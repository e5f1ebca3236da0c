using System.CommandLine;
using System.Globalization;
using ColdSim.App.Text;
using ColdSim.App.Text.Answers;
using ColdSim.Files;
using ColdSim.Files.Results;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Planning.Verification;

namespace ColdSim.App.Commands;

/// <summary>The work of <c>weather FOLDER --against OBSERVED</c>: reads forecasts and observations, and compares them.</summary>
internal sealed class VerificationInput(ParseResult parsed, WeatherOptions o, Host host) : OptionInput(parsed)
{
    // A forecast of this is far from where it was checked.
    private const double Far_m = 50_000, FarUp_m = 300;
    private const int MostFiles = 10_000;

    private static readonly string[] Allowed = ["--against", "--offset", "--bridge", "--out", "--force"];

    /// <summary>The work.</summary>
    /// <exception cref="CommandFault">Something is wrong with the options.</exception>
    public CommandWork<ForecastVerificationReport> Work(string folder, string observed)
    {
        WeatherRequest request = new WeatherInput(Parsed, o, host.Files).Question(observed).Request;
        foreach (Option option in o.All)
        {
            if (IsGiven(option) && !Allowed.Contains(option.Name))
                Faults.Add($"{option.Name} does not go with --against, which takes {string.Join(", ", Allowed.Skip(1))}");
        }

        if (!host.Files.FolderExists(folder))
            Faults.Add($"--against: '{Quote.OfPath(folder)}' is not a folder of forecasts");
        if (!host.Files.Exists(observed))
            Faults.Add($"--against: there is no file '{Quote.OfPath(observed)}'");
        if (Faults.Count > 0)
            throw CommandFault.Input([.. Faults.Select(f => $"coldsim: {f}"), "See 'coldsim weather --help'."]);
        string[] files =
        [
            .. host.Files.In(folder).Where(f => !Path.GetFileName(f).StartsWith('.') && Path.GetFullPath(f) != Path.GetFullPath(observed))
                .Order(StringComparer.Ordinal),
        ];
        if (files.Length is 0 or > MostFiles)
            throw CommandFault.Input($"coldsim: --against: '{Quote.OfPath(folder)}' has {files.Length} files; accepted: 1 to {MostFiles} forecasts");
        foreach (string read in files.Append(observed))
            host.Files.Reads.Add(read);
        IReadOnlyList<FileOutput<ForecastVerificationReport>> output
            = o.Output.Of<ForecastVerificationReport>(Parsed, host, ErrorSizesToml.Kind, _ => "sizes of errors", ErrorSizesToml.Write);
        return new()
        {
            Answer = (done, cancel) => Answer(folder, files, observed, request, output, done, cancel),
            Progress = done => string.Create(CultureInfo.InvariantCulture, $", {done} of {files.Length} forecasts read"),
            OnScreen = VerificationAnswer.Of,
            Text = (a, to) => to.Write(VerificationText.Sections(a, to.Units)),
            BesideJson = a => a.Notes.Select(note => $"note: {note}"),
            Json = JsonReport.Write,
            Files = output,
        };
    }

    private ForecastVerificationReport Answer(
        string folder, string[] files, string observed, WeatherRequest request, IReadOnlyList<FileOutput<ForecastVerificationReport>> output,
        IProgress<int> done, CancellationToken cancel)
    {
        List<string> notes = [];
        List<IssuedForecast> forecasts = [];
        List<WeatherStation> stations = [];
        int undated = 0, repeated = 0;
        foreach (string file in files)
        {
            cancel.ThrowIfCancellationRequested();
            WeatherResult read = Read(file, request);
            DateTimeOffset issued = read.Station.Issued ?? read.Rows[0].Time;
            undated += read.Station.Issued is null ? 1 : 0;
            done.Report(1);
            if (forecasts.Exists(f => f.Issued == issued))
            {
                repeated++;
                continue;
            }

            forecasts.Add(new(Path.GetFileName(file), issued, read.Rows));
            stations.Add(read.Station);
        }

        DateTimeOffset from = forecasts.Min(f => f.Rows[0].Time).AddHours(-3), to = forecasts.Max(f => f.Rows[^1].Time).AddHours(3);
        WeatherResult was = Read(observed, request with { From = Edge(from), To = Edge(to) });
        ForecastVerification verification = ForecastVerification.Of(forecasts, was.Rows);
        if (verification.Forecasts.Count == 0)
            throw CommandFault.Input($"coldsim: --against: '{Quote.OfPath(observed)}' has nothing at the hours of these forecasts");
        if (undated > 0)
            notes.Add(FormattableString.Invariant($"{undated} of {files.Length} files do not say when they were issued; taken as their first row"));
        if (repeated > 0)
            notes.Add(FormattableString.Invariant($"{repeated} files have the issue time of another; left out"));
        if (forecasts.Count > verification.Forecasts.Count)
            notes.Add(FormattableString.Invariant($"{forecasts.Count - verification.Forecasts.Count} forecasts have no hour that was observed; left out"));
        notes.AddRange(Apart(stations[0], was.Station));
        ForecastVerificationReport report = new() { Folder = folder, Observed = observed, Verification = verification, Notes = notes };

        // An answer from too few forecasts is shown, and no size of error is taken from it.
        if (report.Chance.Count == 0 && output.Count > 0)
            throw CommandFault.Input($"coldsim: --out: {verification.Forecasts.Count} issue times; sizes of errors take at least {ForecastVerification.LeastIssues}. "
                + "Without --out the differences are shown");
        return report;
    }

    private WeatherResult Read(string file, WeatherRequest request)
    {
        using Stream stream = host.Files.Open(file);
        WeatherResult read = WeatherFile.Read(stream, file, request);
        return read.Problems.Count == 0 ? read : throw CommandFault.Input([.. read.Problems.Select(p => p.ToString()), "coldsim: nothing was compared"]);
    }

    private static WindowEdge Edge(DateTimeOffset time) => new(time.DateTime, time.Offset);

    private static IEnumerable<string> Apart(WeatherStation forecast, WeatherStation observed)
    {
        if (forecast is { Latitude_deg: { } latitude, Longitude_deg: { } longitude } && observed is { Latitude_deg: { } otherLatitude, Longitude_deg: { } otherLongitude }
            && GreatCircle.Distance_m(latitude, longitude, otherLatitude, otherLongitude) is > Far_m and var away_m)
            yield return FormattableString.Invariant($"the forecasts are for a place {away_m / 1000:0} km from where it was observed");
        if (forecast.Elevation_m - observed.Elevation_m is { } up_m && Math.Abs(up_m) > FarUp_m)
            yield return FormattableString.Invariant($"the forecasts are for {forecast.Elevation_m:0} m and it was observed at {observed.Elevation_m:0} m; the difference is in the errors");
    }
}
