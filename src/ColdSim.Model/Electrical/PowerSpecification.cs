namespace ColdSim.Model.Electrical;

/// <summary>The 12 V side of a coach: the bank, what charges it and what draws from it beside furnace and blankets.</summary>
public sealed record PowerSpecification
{
    /// <summary>The bank.</summary>
    public required BatterySpecification Battery { get; init; }

    /// <summary>Solar panels; none where empty.</summary>
    public IReadOnlyList<SolarPanelSpecification> Panels { get; init; } = [];

    /// <summary>What draws at known rates.</summary>
    public IReadOnlyList<ElectricLoad> Loads { get; init; } = [];

    /// <summary>What charges it from shore power or a generator.</summary>
    public ConverterSpecification Converter { get; init; } = new();

    /// <summary>A generator, or null.</summary>
    public GeneratorSpecification? Generator { get; init; }
}
