using ColdSim.Model.Gas;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Tests.Model;

/// <summary>Mixed gases as a scenario would give them.</summary>
internal static class Blends
{
    public static GasSpecification Winter { get; } = new()
    {
        Name = GasGrades.Winter.Name,
        Composition = GasGrades.Winter.Composition,
        HeatingValue_J_kg = GasBlend.Heat_J(GasGrades.Winter.Composition),
    };
}
