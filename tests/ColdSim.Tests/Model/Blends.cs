using ColdSim.Model.Gas;
using ColdSim.Physics.Mixtures;

namespace ColdSim.Tests.Model;

/// <summary>Mixed gases as a scenario would give them.</summary>
internal static class Blends
{
    public static GasSpecification Winter { get; } = new()
    {
        Name = GasGrade.Winter.Name,
        Composition = GasGrade.Winter.Composition,
        HeatingValue_J_kg = GasBlend.Heat_J(GasGrade.Winter.Composition),
    };
}
