using System.Text;
using ColdSim.Files.Scenarios.Sections;
using ColdSim.Files.Toml;
using ColdSim.Model;
using ColdSim.Model.Appliances;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Coach;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Electrical;
using ColdSim.Model.Furnace;
using ColdSim.Model.Gas;
using ColdSim.Model.Heaters;
using ColdSim.Model.Nodes;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Planning;
using ColdSim.Planning.Compare;
using ColdSim.Planning.Trips;

namespace ColdSim.Files.Scenarios;

/// <summary>Reads a scenario and its weather; <see cref="ScenarioKeys"/> lists every key.</summary>
/// <remarks>All faults are gathered and reported together; none is ever repaired by a default.</remarks>
public static class ScenarioReader
{
    /// <summary>Reads a scenario file; its weather file is looked for beside it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="open">Opens this file and the weather's; null takes the disk's.</param>
    /// <param name="mostRows">
    /// The most rows of weather that are kept, for a scenario that is not run: of a longer file the coldest of each stretch. All of it is read and checked either way.
    /// </param>
    /// <param name="instead">A weather file in place of the one that it names; null for that.</param>
    public static ReadResult Read(string path, Func<string, Stream>? open = null, int? mostRows = null, WeatherInstead? instead = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        string text;
        try
        {
            using Stream file = (open ?? File.OpenRead)(path);
            text = TomlFile.Read(file);
        }
        catch (DecoderFallbackException)
        {
            return Failed(new FileProblem(path, 1, 1, "not a text in UTF-8"));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Failed(new FileProblem(path, 1, 1, "the scenario cannot be opened: " + FileProblem.WhyUnreadable(e)));
        }

        return ReadText(text, path, new FolderWeatherSource(Path.GetDirectoryName(path) ?? "", open), mostRows, instead);
    }

    /// <summary>Reads a scenario's text.</summary>
    /// <param name="text">The text in TOML.</param>
    /// <param name="name">Its name in messages.</param>
    /// <param name="weather">Opens the weather file it names.</param>
    /// <param name="mostRows">The most rows of weather that are kept; null for all.</param>
    /// <param name="instead">A weather file in place of the one that it names; null for that.</param>
    public static ReadResult ReadText(string text, string name, IWeatherSource weather, int? mostRows = null, WeatherInstead? instead = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(weather);
        TomlTree tree = TomlTree.Read(text, name, CylinderSection.Declared.Name);
        if (tree.IsBeyondBounds)
            return new ReadResult { Scenario = null, Problems = tree.Problems, Warnings = [] };
        Reading reading = new(name, tree.HasSyntaxErrors);
        reading.Problems.AddRange(tree.Problems);
        RenamedKeys.Apply(tree.Root, reading);
        WeatherOnce once = new(weather, mostRows, instead);
        Scenario? scenario = ReadTree(new SectionReader(reading, tree.Root, ScenarioKeys.Root), once);
        OptionReader options = new(reading, tree.Root, section => ReadTree(section, once));
        IReadOnlyList<ComparedOption> read = options.Read();
        IReadOnlyList<FileProblem> problems = FileProblem.InOrder(reading.Problems, name);
        bool good = problems.Count == 0;
        return new ReadResult
        {
            Scenario = good ? scenario : null,
            Options = good ? read : [],
            Problems = problems,
            Warnings = reading.Warnings,
        };
    }

    internal static Scenario? ReadTree(SectionReader root, WeatherOnce source)
    {
        Reading reading = root.Reading;
        string title = root.Get(ScenarioKeys.Title) ?? "Untitled";
        GivenPlace place = PlaceSection.Read(root.Section(PlaceSection.Declared));
        string? country = PlaceSection.Country(root.Section(PlaceSection.Declared));
        WeatherSection weather = WeatherSection.Read(
            root.Section(WeatherSection.Declared), source, place, panels: root.Has(SolarSection.Declared), who: root.Has(StopsSection.Declared) ? null : "place",
            RunSection.OffsetOfStart(root.Section(RunSection.Declared)), needed: !StopsSection.HaveTheirOwnWeather(root),
            wanted: root.Has(StopsSection.Declared) ? null : RunSection.Days(root.Section(RunSection.Declared)));
        SiteSpecification site = weather.Site;
        IReadOnlyList<ReadStop> stops = StopsSection.Read(root, place, weather, source);
        WeatherSection first = stops.Count > 0 && !root.Has(WeatherSection.Declared) ? stops[0].Weather : weather;
        RunSection run = RunSection.Read(root.Section(RunSection.Declared), weather, stops);
        (GasSpecification gas, Prices prices) = GasSection.Read(root.Section(GasSection.Declared));
        IReadOnlyList<CylinderSpecification> written = CylinderSection.ReadAll(root);
        (CylinderArrangement arrangement, IReadOnlyList<CylinderSpecification> cylinders) = ArrangementSection.Read(root.Section(ArrangementSection.Declared), written);
        RegulatorSpecification regulator = RegulatorSection.Read(root.Section(RegulatorSection.Declared), arrangement is AutomaticChangeover);
        SectionReader furnaceSection = root.Section(FurnaceSection.Declared);
        (FurnaceSpecification? furnace, DateTimeOffset? furnaceStops, string? ductLossTo) = FurnaceSection.Read(
            furnaceSection, stops.Count > 0 ? stops[0].From.Offset : run.Start.Offset);
        ThermostatSpecification? thermostat = ThermostatSection.Read(root.Section(ThermostatSection.Declared));
        (Occupancy occupancy, int people, double people_W, double carries_kg) = PeopleSection.Read(root.Section(PeopleSection.Declared), furnace is not null);
        CoachSpecification? coach = CoachSection.Read(root.Section(CoachSection.Declared), people_W, people);
        EnclosureSpecification? enclosure = EnclosureSection.Read(root.Section(EnclosureSection.Declared), cylinders, coach);
        IReadOnlyList<OtherHeater> heaters = HeaterSection.ReadAll(root.Sections(HeaterSection.Declared));
        IReadOnlyList<GasAppliance> appliances = AppliancesSection.Read(root, gas);
        (IReadOnlyList<ThermalNode> water, furnace) = WaterSection.Read(root, furnaceSection, furnace, ductLossTo, coach);
        PowerSpecification? power = PowerSection.Read(root, gas);
        NightCriteria criteria = VerdictSection.Read(root.Section(VerdictSection.Declared));
        IReadOnlyList<ReadRefill> refills = RefillsSection.Read(root, written, cylinders, stops.Count > 0 ? stops[0].From.Offset : run.Start.Offset);
        FittedFactors? fitted = FitSection.Read(root.Section(FitSection.Declared));
        (ErrorSizes errors, double wantedChance_frac) = ChanceSection.Read(root.Section(ChanceSection.Declared), fitted);
        root.Finish();
        CheckTogether(root, furnace, thermostat, coach, appliances, people_W);
        AppliancesSection.Check(root, appliances, coach);
        IReadOnlyList<SiteSpecification> sites = stops.Count > 0 ? [.. stops.Select(s => s.Stop.Site)] : [site];
        PowerSection.Check(reading, power, sites);
        CheckGas(root, gas, arrangement);
        CheckPower(reading, sites, cylinders, heaters, appliances);
        if (reading.Problems.Count > 0 || cylinders.Count == 0)
            return null;
        Rig rig = new()
        {
            Site = stops.Count > 0 ? stops[0].Stop.Site : site,
            Gas = gas,
            Cylinders = cylinders,
            Enclosure = enclosure,
            Arrangement = arrangement,
            Regulator = regulator,
            Coach = coach,
            Thermostat = thermostat,
            Furnace = furnace,
            Appliances = appliances,
            Heaters = heaters,
            Water = water,
            Power = power,
            Occupancy = occupancy,
        };
        Scenario scenario = new()
        {
            Title = title,
            Country = country,
            Rig = fitted?.Over(rig) ?? rig,
            Fit = fitted is null ? null : new ScenarioFit(fitted, rig),
            Weather = new WeatherSeries(first.Rows, first.Defaults, ReferenceEquals(first, weather) ? site : rig.Site),
            WeatherDefaults = first.Defaults,
            FilePlaces = PlacesInFile(cylinders, written),
            Start = run.Start,
            Nights = run.Nights,
            Step_s = run.Step_s,
            Criteria = criteria,
            Prices = prices,
            HeatStops = furnaceStops,
            Errors = errors,
            WantedChance_frac = wantedChance_frac,
        };
        int row = 0;
        CylinderSection.CheckStart(root, written, gas, scenario.Weather.At((scenario.Start - scenario.Weather.First).TotalSeconds, ref row));
        scenario = WithTrip(scenario, stops, refills, carries_kg, reading);
        FurnaceSection.CheckStop(furnaceSection, scenario);
        if (reading.Problems.Count == 0)
            WarnOfUnusual(scenario, root);
        return reading.Problems.Count > 0 ? null : scenario with { Assumptions = [.. reading.Assumptions] };
    }

    private static int[] PlacesInFile(IReadOnlyList<CylinderSpecification> ordered, IReadOnlyList<CylinderSpecification> written)
    {
        int[] places = new int[ordered.Count];
        for (int i = 0; i < places.Length; i++)
        {
            while (!ReferenceEquals(ordered[i], written[places[i]]))
                places[i]++;
        }

        return places;
    }

    private static void WarnOfUnusual(Scenario scenario, SectionReader root)
    {
        WrittenScenario written = new(scenario, root);
        foreach (UnusualValue<WrittenScenario> unusual in UnusualScenario.All)
        {
            if (unusual.Find(written) is { } found)
                root.Reading.WarnUnusual(root.PlaceOfPath(unusual.Where), found, unusual.Usual);
        }
    }

    // The scenario with its trip and legs; as it is where it has neither stops nor refills.
    private static Scenario WithTrip(
        Scenario scenario, IReadOnlyList<ReadStop> stops, IReadOnlyList<ReadRefill> refills, double carries_kg, Reading reading)
    {
        Trip whole = stops.Count > 0 ? new Trip { Stops = [.. stops.Select(s => s.Stop)] } : Trip.InOnePlace(scenario);
        DateTimeOffset from = whole.Stops[0].From, to = whole.Stops[^1].To;
        foreach (ReadRefill refill in refills)
        {
            if (refill.Refill.At < from || refill.Refill.At >= to)
            {
                reading.Report(refill.AtPlace, $"the refill at {StopsSection.Shown(refill.Refill.At)} lies outside the {(stops.Count > 0 ? "stops" : "run")}",
                    $"accepted: from {StopsSection.Shown(from)} to before {StopsSection.Shown(to)}");
            }
        }
        if (stops.Count == 0 && refills.Count == 0)
            return scenario with { Trip = null };
        Trip trip = whole with { Refills = [.. refills.Select(r => r.Refill)], Carries_kg = carries_kg };
        return scenario with { Trip = trip, Legs = TripLegs.Of(trip, scenario.Rig.Cylinders) };
    }

    // What is worked out for propane alone.
    private static void CheckGas(SectionReader root, GasSpecification gas, CylinderArrangement arrangement)
    {
        if (!gas.IsMixed)
            return;
        if (arrangement is OpenTogether)
            root.Report(ArrangementSection.Declared, "cylinders open together with a mixed gas, whose vapour would go from one composition into another", "accepted: kind = \"by hand\" or \"changeover\", or propane alone");
        if (root.Has(RefillsSection.Declared))
            root.Report(RefillsSection.Declared, "a refill of a mixed gas, which would be mixed with what was left behind", "accepted: propane alone, or no [[refill]]");
    }

    private static void CheckTogether(
        SectionReader root, FurnaceSpecification? furnace, ThermostatSpecification? thermostat, CoachSpecification? coach,
        IReadOnlyList<GasAppliance> draws, double people_W)
    {
        Reading reading = root.Reading;
        if (furnace is not null && coach is null)
            reading.Missing(root.PlaceOf(FurnaceSection.Declared), "a furnace without a coach", "accepted: [furnace] together with [coach] and [thermostat]");
        if (furnace is not null && thermostat is null)
            reading.Missing(root.PlaceOf(FurnaceSection.Declared), "a furnace without a thermostat", "accepted: [furnace] together with [coach] and [thermostat]");
        if (furnace is null && draws.Count == 0)
            reading.Warn($"neither a [furnace] nor a [[draw]]: nothing draws gas");
        if (coach is null && draws.Any(d => d is ConstantDraw { WarmsCoach_frac: > 0 }))
            reading.Warn($"a [[draw]] gives heat_to_coach, and there is no [coach]");
        if (coach is null && people_W > 0)
            reading.Warn($"[people] counts people, and there is no [coach] for them to warm");
    }

    private static void CheckPower(
        Reading reading, IReadOnlyList<SiteSpecification> sites, IReadOnlyList<CylinderSpecification> cylinders, IReadOnlyList<OtherHeater> heaters,
        IReadOnlyList<GasAppliance> appliances)
    {
        if (sites.Any(s => s.Hookup))
            return;
        string nowhere = $"and {(sites.Count > 1 ? "no stop" : "[place]")} has {(sites.Count > 1 ? "a" : "no")} hookup";
        if (cylinders.Any(c => c.Blanket is { Supply: BlanketSupply.ShorePower, Power_W: > 0 }))
            reading.Warn($"a blanket on shore power, {nowhere}: it is insulation only");
        foreach (OtherHeater heater in heaters.Where(h => h.Supply == HeaterSupply.ShorePower))
            reading.Assume($"{heater.Name}: it runs on shore power, {nowhere}, so it gives no heat");
        foreach (GasAppliance appliance in appliances.Where(a => a.ElectricInput_W > 0))
            reading.Assume($"{appliance.Name}: its electric element has no hookup, so it runs on gas");
    }

    private static ReadResult Failed(FileProblem problem) => new() { Scenario = null, Problems = [problem], Warnings = [] };
}
