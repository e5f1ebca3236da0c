using System.CommandLine;
using System.Globalization;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Files.Weather;
using ColdSim.Files.Weather.Formats;
using ColdSim.Physics.Units;
using ColdSim.Planning.Quick;
using WeatherInstead = ColdSim.Files.Scenarios.WeatherInstead;

namespace ColdSim.App.Commands;

/// <summary>Reads what the options of <c>tonight</c> say of the night: when it is, and how cold.</summary>
internal sealed class TonightNight(ParseResult parsed, TonightOptions o, Host host) : OptionInput(parsed)
{
    private static readonly TimeSpan Before = TimeSpan.FromHours(6), After = TimeSpan.FromHours(30);

    /// <summary>The night, without the rows of a weather file.</summary>
    public QuickNight Read()
    {
        double? low_K = Temperature(o.Low, -60, 40), high_K = Temperature(o.High, -60, 50);
        if (high_K < low_K)
            Faults.Add("--high is below --low");
        if (Parsed.GetValue(o.Weather) is not null)
        {
            foreach (Option<string?> option in (Option<string?>[])[o.Low, o.High])
            {
                if (Parsed.GetValue(option) is not null)
                    Faults.Add($"--weather and {option.Name}: the file has the temperatures; drop {option.Name} or --weather");
            }
        }

        bool now = Parsed.GetValue(o.Now);
        if (now && IsGiven(o.Start))
            Faults.Add("--now and --start both say when the run starts; drop one of them");
        if (!now && IsGiven(o.InsideNow))
            Faults.Add("--inside-now goes with --now; the thermostat's setting is --inside");
        DateTimeOffset clock = host.Clock.GetLocalNow();
        DateTimeOffset noon = now ? NoonAtOrBefore(clock) : NoonBefore(clock);
        return new()
        {
            Noon = noon,
            Start = now ? clock.AddTicks(-(clock.Ticks % TimeSpan.TicksPerMinute)) : FirstAfter(noon, Clock(o.Start) ?? new TimeOnly(18, 0)),
            IsNow = now,
            Low_K = low_K ?? double.NaN,
            High_K = high_K,
            MastWind_m_s = Read<UnitsNet.Speed>(o.Wind, QuantityText.TryParseSpeed, s => s.MetersPerSecond, 0, 50, "0 to 50 m/s (110 mph)"),
            SetPoint_K = Temperature(o.Inside, 0, 35),
            InsideAtStart_K = Temperature(o.InsideNow, -40, 45),
        };
    }

    /// <summary>The window of the weather file around the night, in place of the rig's weather; null where no file is given.</summary>
    /// <exception cref="CommandFault">There is no such file.</exception>
    public WeatherInstead? Instead(QuickNight night)
    {
        if (ScenarioFile.Instead(Parsed.GetValue(o.Weather), host) is not { } weather)
            return null;
        WeatherRequest window = Window(night);
        return weather with { Offset = window.Offset, From = window.From, To = window.To };
    }

    /// <summary>The night with the rows of the weather file, where one is given.</summary>
    /// <exception cref="CommandFault">It is faulty or does not cover the night.</exception>
    public QuickNight WithWeather(QuickNight night)
    {
        if (Parsed.GetValue(o.Weather) is not { } path)
            return night;
        if (!host.Files.Exists(path))
            throw CommandFault.Input($"coldsim: --weather: there is no file '{Quote.OfPath(path)}'");
        WeatherRequest request = Window(night);
        using Stream stream = host.Files.Open(path);
        WeatherResult weather = WeatherFile.Read(stream, path, request);
        foreach (string warning in weather.Warnings)
            host.Error.WriteLine($"warning: {warning}");
        if (weather.Problems.Count > 0)
            throw CommandFault.Input([.. weather.Problems.Select(p => p.ToString()), "coldsim: nothing was run"]);
        CheckCovers(night, weather.Rows[0].Time, weather.Rows[^1].Time);
        return night with { Rows = weather.Rows, Elevation_m = weather.Station.Elevation_m };
    }

    /// <summary>Refuses a weather file that has nothing before the start or after it.</summary>
    /// <exception cref="CommandFault">It does not cover the start.</exception>
    public void CheckCovers(QuickNight night, DateTimeOffset first, DateTimeOffset last)
    {
        TimeSpan offset = night.Start.Offset;
        if (first > night.Start || last <= night.Start)
        {
            throw CommandFault.Input(
                $"coldsim: --weather: '{Quote.OfPath(Parsed.GetValue(o.Weather)!)}' has {ClockText.DayOfYear(first.ToOffset(offset))} to {ClockText.DayOfYear(last.ToOffset(offset))} around tonight; "
                    + $"the run starts {ClockText.DayOfYear(night.Start)}, and needs a row before it and one after");
        }
    }

    private static WeatherRequest Window(QuickNight night)
    {
        TimeSpan offset = night.Start.Offset;
        return new() { Offset = offset, From = new WindowEdge((night.Start - Before).DateTime, offset), To = new WindowEdge((night.Noon + After).DateTime, offset) };
    }

    // Before six in the morning, tonight is the night that is going on.
    private static DateTimeOffset NoonBefore(DateTimeOffset now) => new DateTimeOffset(now.Date.AddDays(now.Hour < 6 ? -1 : 0).AddHours(12), now.Offset);

    private static DateTimeOffset NoonAtOrBefore(DateTimeOffset now) => new DateTimeOffset(now.Date.AddDays(now.Hour < 12 ? -1 : 0).AddHours(12), now.Offset);

    private static DateTimeOffset FirstAfter(DateTimeOffset noon, TimeOnly clock)
    {
        TimeSpan sinceNoon = clock.ToTimeSpan() - noon.TimeOfDay;
        return noon + (sinceNoon < TimeSpan.Zero ? sinceNoon + TimeSpan.FromDays(1) : sinceNoon);
    }

    private double? Temperature(Option<string?> option, double min_C, double max_C)
        => Read<UnitsNet.Temperature>(option, QuantityText.TryParseTemperature, t => t.Kelvins, min_C + ConversionFactors.ZeroCelsius_K, max_C + ConversionFactors.ZeroCelsius_K,
            FormattableString.Invariant($"{min_C} to {max_C} °C ({min_C * 1.8 + 32:0} to {max_C * 1.8 + 32:0} °F)"));

    private TimeOnly? Clock(Option<string?> option)
    {
        if (Parsed.GetValue(option) is not { } text)
            return null;
        if (TimeOnly.TryParseExact(text, ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time))
            return time;
        Faults.Add($"{option.Name}: '{Quote.Of(text)}' is not a clock time such as 18:00");
        return null;
    }
}
