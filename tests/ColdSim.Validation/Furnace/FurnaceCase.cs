namespace ColdSim.Validation.Furnace;

/// <summary>A furnace case of the comparative test of the IEA's Task 22 (also in ASHRAE 140) with its printed results.</summary>
/// <param name="Name">Its name, and that of its scenario file.</param>
/// <param name="Efficiency_frac">Steady efficiency of its furnace.</param>
/// <param name="LoadLow_GJ">Lowest printed furnace load of the ninety days.</param>
/// <param name="LoadHigh_GJ">Highest.</param>
internal sealed record FurnaceCase(string Name, double Efficiency_frac, double LoadLow_GJ, double LoadHigh_GJ)
{
    /// <summary>Printed input of the ninety days, where it is analytic. [GJ]</summary>
    public double? Input_GJ { get; init; }

    /// <summary>Whether our furnace is of the case's kind: it has no curve of efficiency by part load.</summary>
    public bool InputIsJudged { get; init; } = true;

    /// <summary>Printed lowest and highest mean temperature of the zone. [°C]</summary>
    public (double Low, double High)? Mean_C { get; init; }

    /// <summary>Printed lowest and highest of the least hourly mean. [°C]</summary>
    public (double Low, double High)? Minimum_C { get; init; }

    /// <summary>All cases.</summary>
    public static IReadOnlyList<FurnaceCase> All { get; } =
    [
        new("HE100", 1, 77.74, 77.74) { Input_GJ = 77.71 },
        new("HE110", 0.8, 77.74, 77.74) { Input_GJ = 97.22 },
        new("HE120", 0.8, 31.10, 31.10) { Input_GJ = 38.27, InputIsJudged = false },
        new("HE130", 0.8, 0, 0) { Input_GJ = 0 },
        new("HE140", 0.8, 31.10, 31.10) { Input_GJ = 39.00, InputIsJudged = false },
        new("HE210", 0.8, 41.36, 42.06) { Mean_C = (19.98, 20.01), Minimum_C = (19.89, 20.00) },
        new("HE220", 0.8, 39.41, 39.87) { Mean_C = (18.53, 18.75), Minimum_C = (14.94, 15.00) },
        new("HE230", 0.8, 34.32, 34.59) { Mean_C = (15.17, 15.64), Minimum_C = (1.45, 4.48) },
    ];
}
