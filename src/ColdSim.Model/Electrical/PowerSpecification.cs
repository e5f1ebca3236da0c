namespace ColdSim.Model.Electrical;

/// <summary>The 12 V side of a coach: the bank, what charges it and what draws from it beside furnace and blankets.</summary>
public sealed record PowerSpecification
{
    /// <summary>The furnace's fan, as a place among those that draw.</summary>
    public const int FanPlace = 0;

    /// <summary>All blankets on the battery, as a place among those that draw.</summary>
    public const int BlanketsPlace = 1;

    /// <summary>The first of the loads, as a place among those that draw.</summary>
    public const int FirstLoadPlace = 2;

    /// <summary>The battery bank.</summary>
    public required BatterySpecification Battery { get; init; }

    /// <summary>Solar panels; none where empty.</summary>
    public IReadOnlyList<SolarPanelSpecification> Panels { get; init; } = [];

    /// <summary>Loads with known rates.</summary>
    public IReadOnlyList<ElectricLoad> Loads { get; init; } = [];

    /// <summary>Converter that charges it from shore power or a generator.</summary>
    public ConverterSpecification Converter { get; init; } = new();

    /// <summary>A generator, or null.</summary>
    public GeneratorSpecification? Generator { get; init; }

    /// <summary>How many places there are for what draws: the fan, the blankets, then the loads in their order.</summary>
    public int Places => FirstLoadPlace + Loads.Count;

    /// <summary>Name of the load at a place.</summary>
    /// <param name="place">0 to <see cref="Places"/> less 1.</param>
    public string NameOf(int place) => place switch { FanPlace => "furnace fan", BlanketsPlace => "blankets", _ => Loads[place - FirstLoadPlace].Name };
}

/// <summary>Something that draws from the 12 V side at a known rate, such as lights, boards or a device for breathing. SI units.</summary>
public sealed record ElectricLoad
{
    /// <summary>Name for messages.</summary>
    public required string Name { get; init; }

    /// <summary>Power while it is on, averaged over its own switching. [W]</summary>
    public required double Power_W { get; init; }

    /// <summary>Hours of the day in which it is on; empty means always.</summary>
    public IReadOnlyList<ClockWindow> Hours { get; init; } = [];
}
