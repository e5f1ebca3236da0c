using System.CommandLine;
using ColdSim.App.Text;
using ColdSim.Files;
using ColdSim.Files.Quantities;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Gas;
using ColdSim.Planning;
using ColdSim.Planning.Quick;
using WeatherInstead = ColdSim.Files.Scenarios.WeatherInstead;

namespace ColdSim.App.Commands;

/// <summary>Reads the options of <c>tonight</c>; all faults are reported together.</summary>
internal sealed class TonightInput(ParseResult parsed, TonightOptions o, UnitStyle units, Host host) : OptionInput(parsed)
{
    /// <summary>The scenario that is asked for: of a rig's file, or of what the options say.</summary>
    /// <exception cref="CommandFault">Something is wrong.</exception>
    public Scenario Scenario()
    {
        Option[] ofRig = [.. o.OfRig.Where(IsGiven)];
        string? rig = Parsed.GetValue(o.Rig);
        if (rig is not null && ofRig.Length > 0)
        {
            string names = string.Join(", ", ofRig.Select(r => r.Name));
            throw Wrong([$"--rig and {names} both say what the rig is; drop {names} to run the file, or drop --rig to run without it"]);
        }

        rig ??= ofRig.Length == 0 ? KeptRig.Find(host) : null;
        TonightNight night = new(Parsed, o, host);
        return rig is null ? WithoutFile(night) : OfRig(rig, night);
    }

    private Scenario WithoutFile(TonightNight reader)
    {
        QuickNight night = reader.Read();
        Faults.AddRange(reader.Found);
        bool noLow = double.IsNaN(night.Low_K) && Parsed.GetValue(o.Weather) is null;
        foreach ((string name, bool missing) in new[]
        {
            ("--low", noLow && Parsed.GetValue(o.Low) is null), ("--cylinder", !IsGiven(o.Cylinder)), ("--left", !IsGiven(o.Left)), ("--furnace", !IsGiven(o.Furnace)),
        })
        {
            if (missing)
                Faults.Add($"{name} is missing");
        }

        TonightCylinders cylinders = new(Parsed, o);
        IReadOnlyList<CylinderSpecification> sizes = cylinders.Read();
        Faults.AddRange(cylinders.Found);
        GasGrade gas = Gas();
        CylinderArrangement arrangement = Joined(sizes.Count, gas);
        QuickQuestion question = new()
        {
            Night = night,
            Cylinders = sizes,
            Arrangement = arrangement,
            Gas = gas,
            Blanket_W = Read<UnitsNet.Power>(o.Blanket, QuantityText.TryParsePower, p => (double)p.Watts, 1, 2000, "1 W to 2 kW"),
            Furnace_W = Read<UnitsNet.Power>(o.Furnace, QuantityText.TryParsePower, p => (double)p.Watts, 500, 60_000, "0.5 to 60 kW (1,700 to 205,000 BTU/h)") ?? double.NaN,
            CoachLength_m = Length(o.Length, 2, 20, "2 to 20 m (7 to 65 ft)"),
            Grade = IsGiven(o.Grade) ? Enum.Parse<CoachGrade>(Parsed.GetValue(o.Grade)!, ignoreCase: true) : null,
            WindExposure_frac = Read<UnitsNet.Ratio>(IsGiven(o.WindShelter) && !IsGiven(o.WindExposure) ? o.WindShelter : o.WindExposure, QuantityText.TryParseRatio, r => r.DecimalFractions, 0, 1, "0 to 1"),
            Elevation_m = Length(o.Elevation, -450, 5000, "-450 to 5,000 m (-1,400 to 16,400 ft)"),
        };
        if (Faults.Count > 0)
            throw Wrong(IsGiven(o.Cylinder) ? Faults : [.. Faults, "or name your rig with --rig FILE; 'coldsim new --mine' keeps one for every night"]);
        return QuickScenario.Of(question with { Night = reader.WithWeather(night) });
    }

    private Scenario OfRig(string path, TonightNight reader)
    {
        QuickNight night = reader.Read();
        Faults.AddRange(reader.Found);
        WeatherInstead? weather = reader.Instead(night);
        Scenario scenario = ScenarioFile.Read(path, host, weather);
        TonightCylinders cylinders = new(Parsed, o);
        IReadOnlyList<double>? left_kg = cylinders.ReadLeft(scenario);
        Faults.AddRange(cylinders.Found);
        bool ownWeather = Parsed.GetValue(o.Low) is null;
        if (weather is null && ownWeather && !RigTonight.HasWeatherFor(scenario, night))
        {
            Faults.Add($"--low is missing: the weather of '{Quote.OfPath(path)}' goes from {ClockText.DayOfYear(scenario.Weather.First)} to "
                + $"{ClockText.DayOfYear(scenario.Weather.Last)} and does not cover tonight; give --low \"-8 °F\" or --weather FILE");
        }

        if (Faults.Count > 0)
            throw Wrong(Faults);
        bool log = left_kg is null && !Parsed.GetValue(o.Log.NoLog);
        scenario = left_kg is not null ? RigTonight.WithLeft(scenario, left_kg)
            : log ? TonightLog.Latest(path, scenario, Parsed.GetValue(o.Log.SkipDamaged), units, host) : scenario;
        if (weather is not null)
            reader.CheckCovers(night, scenario.Weather.First, scenario.Weather.Last);
        Scenario tonight = RigTonight.Of(scenario, night);
        IEnumerable<string> assumed = tonight.Assumptions.Where(a => !IsOfRun(a));
        return tonight with { Assumptions = ownWeather ? [.. assumed] : [.. assumed.Where(a => !IsOfWeather(a)), .. QuickScenario.AssumedOfAir(night)] };
    }

    // What was assumed of the weather in the file holds for that weather alone.
    private static bool IsOfWeather(string assumption)
        => assumption.StartsWith("weather:", StringComparison.Ordinal) || assumption.Contains("not in the weather file", StringComparison.Ordinal)
            || assumption.Contains("not given for the days", StringComparison.Ordinal);

    // Tonight starts when it is asked for.
    private static bool IsOfRun(string assumption) => assumption.StartsWith("run:", StringComparison.Ordinal);

    private GasGrade Gas()
    {
        if (Parsed.GetValue(o.Gas) is not { } text)
            return GasGrade.Propane;
        for (int i = 0; i < GasGrade.Names.Count; i++)
        {
            if (GasGrade.Names[i].Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
                return GasGrade.Of(i);
        }

        Faults.Add($"--gas: '{Quote.Of(text)}' is not a gas that is sold here; accepted: {string.Join(", ", GasGrade.Names.Select(n => $"\"{n}\""))}");
        return GasGrade.Propane;
    }

    private CylinderArrangement Joined(int cylinders, GasGrade gas)
    {
        if (Parsed.GetValue(o.Joined) is not { } text)
            return new OneAtATime();
        CylinderArrangement? arrangement = text.Trim().Replace('-', ' ').ToLowerInvariant() switch
        {
            "by hand" => new OneAtATime(),
            "changeover" => new AutomaticChangeover(),
            "together" => new OpenTogether(),
            _ => null,
        };
        if (arrangement is null)
            Faults.Add($"--joined: '{Quote.Of(text)}' is not a way to join cylinders; accepted: together, changeover, by-hand");
        else if (cylinders == 1)
            Faults.Add("--joined: there is one cylinder; give several with --cylinder, such as --cylinder \"20 lb,30 lb\"");
        else if (arrangement is AutomaticChangeover && cylinders > 2)
            Faults.Add($"--joined: a changeover takes two cylinders, not {UnitStyle.Number(cylinders, 0)}; accepted: together, by-hand");
        else if (arrangement is OpenTogether && gas.Composition != GasGrade.Propane.Composition)
            Faults.Add($"--joined: cylinders of {gas.Name} open together cannot be simulated; accepted: changeover, by-hand");
        return arrangement ?? new OneAtATime();
    }

    private double? Length(Option<string?> option, double min_m, double max_m, string range)
        => Read<UnitsNet.Length>(option, QuantityText.TryParseLength, l => l.Meters, min_m, max_m, range);

    private static CommandFault Wrong(IEnumerable<string> faults) => CommandFault.Input([.. faults.Select(f => $"coldsim: {f}"), "See 'coldsim tonight --help'."]);
}
