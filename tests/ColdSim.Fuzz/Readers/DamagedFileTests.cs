using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using ColdSim.Tests.Files.Weather;
using Xunit;
using Xunit.Abstractions;

namespace ColdSim.Fuzz.Readers;

/// <summary>Damaged scenarios, weather files, logs and column maps are read, or refused with their places; nothing else ever comes of them.</summary>
/// <remarks><c>COLDSIM_FUZZ_FILES</c> says how many; each has the same damage in every run.</remarks>
public sealed class DamagedFileTests(ITestOutputHelper output)
{
    // A run takes much longer than a reading.
    private const int ReadForEachRun = 30;

    private static readonly byte[][] Scenarios = [.. Directory.GetFiles(Folder(), "*.toml").Order(StringComparer.Ordinal).Select(File.ReadAllBytes)];

    private static readonly byte[][] Weather =
    [
        .. ((string[])[Samples.Epw, Samples.Tmy3, Samples.LcdMetric, Samples.LcdUs, Samples.Ghcnh, Samples.OpenMeteo, Samples.Meteostat, Samples.MeteostatBulk, Samples.MeteostatYear, Samples.Forecast, ForecastSamples.OpenMeteo, ForecastSamples.MetNorway,
            PublisherSamples.EnvironmentCanada, PublisherSamples.EnvironmentCanadaColumns, PublisherSamples.Nsrdb, PublisherSamples.PvgisPanel, PublisherSamples.PvgisLevel, PublisherSamples.PvgisTypical,
            PublisherSamples.GlobalHourly, PublisherSamples.OpenMeteoBlocks, PublisherSamples.OpenMeteoPlaces]).Select(Encoding.UTF8.GetBytes),
        File.ReadAllBytes(Path.Combine(Folder(), "cold-snap-weather.csv")),
        File.ReadAllBytes(Path.Combine(Folder(), "fortnight-1.csv")),
        File.ReadAllBytes(Path.Combine(Folder(), "three-days.weather.csv")),
    ];

    private static readonly byte[] Log = File.ReadAllBytes(Path.Combine(Folder(), "three-days.log.csv"));

    private static readonly byte[] Map = Encoding.UTF8.GetBytes("time = \"when\"\ntime_format = \"dd.MM.yyyy HH:mm\"\nseparator = \";\"\nair = \"t out\"\nair_unit = \"°C\"\nwind = \"gust [km/h]\"\n");

    private static readonly byte[] Mapped = Encoding.UTF8.GetBytes("when;t out;gust [km/h]\n10.01.2031 06:00;-10,5;3\n10.01.2031 07:00;-11;4\n10.01.2031 08:00;-12;\n");

    [Fact]
    public void A_damaged_file_is_read_or_refused_with_its_place()
    {
        string root = Path.Combine(FuzzOptions.Keep, "readers");
        if (Directory.Exists(root))
            Directory.Delete(root, recursive: true);
        ReaderOutcome[] outcomes = new ReaderOutcome[FuzzOptions.Files];
        Parallel.For(0, outcomes.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Min(2, Environment.ProcessorCount) }, place =>
        {
            int i = FuzzOptions.First + place;

            // Written before it is read, so that it is there even where reading it ends the whole process.
            string folder = Path.Combine(root, i.ToString("000000", CultureInfo.InvariantCulture));
            Directory.CreateDirectory(folder);
            Stopwatch watch = Stopwatch.StartNew();
            (string kind, string[] words, bool scenario) = Write(FuzzOptions.RandomOf(i), i, folder);
            (int code, string? fault) = ReaderCase.Run(words, mustBePlaced: true);
            bool run = fault is null && code == 0 && scenario && i % ReadForEachRun == 0;
            if (run)
                (_, fault) = ReaderCase.Run(["run", words[1], "--no-log"], mustBePlaced: false);
            outcomes[place] = new(i, kind, fault is not null ? Taken.Failed : code == 2 ? Taken.Refused : Taken.Read, run, watch.Elapsed.TotalSeconds, fault ?? "");
            if (fault is null)
                Directory.Delete(folder, recursive: true);
            else
                File.WriteAllText(Path.Combine(folder, "why.txt"), $"coldsim {string.Join(' ', words)}\n{fault}\n");
        });
        string summary = Summary(outcomes);
        output.WriteLine(summary);
        if (FuzzOptions.Report is { } report)
            File.WriteAllText(report + ".readers", summary);
        string[] failed = [.. outcomes.Where(o => o.Taken == Taken.Failed).Select(o => $"{o.Number} ({o.Kind}): {o.Why}")];
        Assert.True(failed.Length == 0, $"{failed.Length} of {outcomes.Length} failed; they are kept in {root}\n{string.Join('\n', failed.Take(20))}");
        Assert.True(outcomes.Count(o => o.Taken == Taken.Read) >= outcomes.Length / 20, "hardly any file is still read, so the damage is too great");
    }

    // Everything that one command line reads, one file of it damaged.
    private static (string Kind, string[] Words, bool Scenario) Write(Random random, int number, string folder)
    {
        string Put(string name, byte[] bytes)
        {
            string path = Path.Combine(folder, name);
            File.WriteAllBytes(path, bytes);
            return path;
        }

        int kind = number % 10;
        if (kind < 4)
        {
            byte[] scenario = Scenarios[random.Next(Scenarios.Length)];
            foreach (string file in Directory.GetFiles(Folder(), "*.csv"))
            {
                string name = Path.GetFileName(file);
                if (!name.EndsWith(".log.csv", StringComparison.Ordinal) && Encoding.UTF8.GetString(scenario).Contains(name, StringComparison.Ordinal))
                    File.Copy(file, Path.Combine(folder, name));
            }

            return ("scenario", ["check", Put("s.toml", Mutation.Of(random, scenario, Scenarios[random.Next(Scenarios.Length)]))], true);
        }

        if (kind < 8)
        {
            int which = random.Next(Weather.Length);
            byte[] weather = Mutation.Of(random, Weather[which], Weather[random.Next(Weather.Length)]);
            return ("weather", ["weather", Put("w.csv", random.Next(20) == 0 ? Packed(weather, random) : weather), .. random.Next(4) == 0 ? (string[])["--json"] : [],
                .. random.Next(3) > 0 ? (string[])["--offset", "-05:00", "--latitude", "46", "--longitude", "-94"] : []], false);
        }

        if (kind < 9)
        {
            Put("three-days.weather.csv", Weather[^1]);
            Put("s.log.csv", Mutation.Of(random, Log, Log));
            string scenario = Put("s.toml", File.ReadAllBytes(Path.Combine(Folder(), "three-days.toml")));
            return ("log", ["log", "show", scenario, .. random.Next(2) == 0 ? (string[])["--skip-damaged"] : []], false);
        }

        bool damageMap = random.Next(2) == 0;
        string table = Put("w.csv", damageMap ? Mapped : Mutation.Of(random, Mapped, Weather[^1]));
        return ("column map", ["weather", table, "--offset", "+01:00", "--columns", Put("m.toml", damageMap ? Mutation.Of(random, Map, Scenarios[0]) : Map)], false);
    }

    private static byte[] Packed(byte[] bytes, Random random)
    {
        using MemoryStream packed = new();
        using (System.IO.Compression.GZipStream zip = new(packed, System.IO.Compression.CompressionLevel.Fastest))
            zip.Write(bytes);
        byte[] all = packed.ToArray();
        if (random.Next(2) == 0)
            all[random.Next(2, all.Length)] ^= 0x10;
        return all;
    }

    private static string Summary(ReaderOutcome[] outcomes)
    {
        StringBuilder text = new();
        foreach (IGrouping<string, ReaderOutcome> kind in outcomes.GroupBy(o => o.Kind).Prepend(outcomes.GroupBy(_ => "all").First()))
        {
            text.Append(CultureInfo.InvariantCulture, $"{kind.Key}: {kind.Count()} files, {kind.Count(o => o.Taken == Taken.Read)} read, {kind.Count(o => o.Taken == Taken.Refused)} refused, ")
                .Append(CultureInfo.InvariantCulture, $"{kind.Count(o => o.HasRun)} run, {kind.Count(o => o.Taken == Taken.Failed)} failed; slowest {kind.Max(o => o.Seconds):0.00} s (number {kind.MaxBy(o => o.Seconds)!.Number})\n");
        }

        return text.ToString();
    }

    private static string Folder([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "scenarios"));
}
