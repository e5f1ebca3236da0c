using ColdSim.Files;
using ColdSim.Files.Disk;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Model.Weather;
using ColdSim.Planning.Climate;

namespace ColdSim.App.Commands;

/// <summary>Reads a weather file for an answer, row by row. No rows are held but those of the nights picked; what needs them again reads the file again.</summary>
internal sealed class WeatherReading(WeatherQuestion question, Host host)
{
    private PlacedRows? _route;
    private CancellationToken _cancel;

    /// <summary>Rows of the reading that goes on; may be asked from another thread.</summary>
    public long RowsRead => Volatile.Read(ref _route)?.Rows ?? 0;

    public WeatherFileReport Answer(CancellationToken cancel)
    {
        _cancel = cancel;
        string path = question.Path;
        Check(path, host);
        WeatherLook look = new(question.Below_K, question.Spell is not null);
        PlacedRows route = Route(row => look.Take(row, _route!.Clock));
        WeatherResult weather = Rows(path, question.Request, route, host);
        foreach (string warning in weather.Warnings)
            host.Error.WriteLine($"warning: {warning}");
        if (weather.Problems.Count > 0)
            throw CommandFault.Input([.. weather.Problems.Select(p => p.ToString()), .. HowRead(weather)]);
        if (route.Refusal is { } refusal)
            throw refusal;
        IReadOnlyList<string> done = route.Finish();
        WeatherFileReport answer = new()
        {
            File = path,
            Weather = weather,
            Counts = look.Has,
            Air = look.Air.Slices,
            Clock = route.Clock,
            Digest = look.Digest,

            // The file is named once, above them.
            Notes = [.. weather.Notes.Select(n => n.StartsWith($"{path}: ", StringComparison.Ordinal) ? n[(path.Length + 2)..] : n), .. done, .. OfTypicalYear(weather)],
        };
        return question.Spell is { } asked ? WithSpell(answer, asked, look.Nights) : answer;
    }

    // A rank in a year that is put together is no chance.
    private string[] OfTypicalYear(WeatherResult weather) => weather.IsTypicalYear && question.Spell?.Rule is { } rule && (rule.Percent ?? rule.Years) is not null
        ? ["a typical year: its months were picked for being usual, so its cold nights say little of how rare cold is; use a record of many years that were"] : [];

    /// <summary>Reads the file again.</summary>
    /// <param name="answer">What it was the first time.</param>
    /// <param name="take">Takes its rows as they are at the place.</param>
    public void Again(WeatherFileReport answer, Action<WeatherRow> take)
    {
        long rows = 0;
        PlacedRows route = Route(row =>
        {
            rows++;
            take(row);
        });
        WeatherResult weather = Rows(question.Path, question.Request, route, host);
        route.Finish();
        if (weather.Problems.Count > 0 || rows != answer.Digest.Rows)
            throw CommandFault.Input($"coldsim: '{question.Path}' is not what it was when it was read first; --night, --spell, --coldest and --out read it twice, so it can be no pipe");
    }

    /// <summary>Reads a weather file of any layout row by row.</summary>
    public static WeatherResult Rows(string path, WeatherRequest request, IRowSink rows, Host host)
    {
        using Stream stream = Opened(path, host);
        return WeatherFile.Read(stream, path, request, rows);
    }

    /// <summary>Opens a weather file whole, for what is read of it once.</summary>
    /// <exception cref="CommandFault">There is no such file.</exception>
    public static Stream OpenFile(string path, Host host)
    {
        Check(path, host);
        return Opened(path, host);
    }

    private static void Check(string path, Host host)
    {
        if (host.Files.FolderExists(path))
            throw CommandFault.Input($"coldsim: '{Quote.OfPath(path)}' is a folder, not a weather file");
        if (!host.Files.Exists(path))
            throw CommandFault.Input($"coldsim: there is no file '{Quote.OfPath(path)}'");
    }

    private static Stream Opened(string path, Host host)
    {
        try
        {
            return host.Files.Open(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw FileFaultException.NotRead(path, e);
        }
    }

    private string[] HowRead(WeatherResult weather) => weather.OtherKind is not null ? []
        : question.Request.Map is not null ? ["coldsim: read by the map of --columns"]
        : [$"coldsim: read as {weather.Format.Title()}; --format reads it as another layout, --columns by a map of its headings, which --map proposes"];

    private PlacedRows Route(Action<WeatherRow> next)
    {
        PlacedRows route = new(question, next, _cancel);
        Volatile.Write(ref _route, route);
        return route;
    }

    private WeatherFileReport WithSpell(WeatherFileReport answer, SpellQuestion asked, IReadOnlyList<ColdNight> nights)
    {
        IReadOnlyList<ColdSpell> spells = asked.Spells(nights);
        if (asked.Rule is { } rule)
        {
            DesignSpell picked = rule.Pick(spells, asked.Option, answer.Weather.IsTypicalYear);
            return WithRows(answer with { Picked = picked }, picked.Spell);
        }

        ColdestSpells coldest = ColdestSpells.Of(spells);
        return WithRows(answer with { Coldest = coldest }, coldest.ByMean[0]);
    }

    private WeatherFileReport WithRows(WeatherFileReport answer, ColdSpell spell)
    {
        List<WeatherRow> rows = [];
        AirCurve curve = new();
        int place = 0;
        Again(answer, row =>
        {
            if (place >= spell.First.FirstRow && place <= spell.Last.LastRow)
            {
                rows.Add(row);
                curve.Add(row);
            }

            place++;
        });
        return answer with { SpellRows = rows, SpellNights = SpellNights.Of(rows, answer.Clock), Air = curve.Slices };
    }
}
