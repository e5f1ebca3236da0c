using ColdSim.Physics.HeatTransfer;

namespace ColdSim.Model.Moisture;

/// <summary>Damp in the coach's air: where it comes from and the surface on which it first settles. SI units.</summary>
public sealed record MoistureSpecification
{
    /// <summary>Air in the coach. [m³]</summary>
    public required double Volume_m3 { get; init; }

    /// <summary>People, wet clothes, cooking other than by an open flame: water that goes into the air. [kg/s]</summary>
    public double Sources_kg_s { get; init; }

    /// <summary>Heat transmission of the coldest surface, such as single glass. [W/(m²·K)]</summary>
    public double ColdestU_W_m2K { get; init; } = 5.8;

    /// <summary>Area of the coldest surface. [m²]</summary>
    public double ColdestArea_m2 { get; init; } = 2;

    /// <summary>Film inside it. [m²·K/W]</summary>
    public double InsideFilm_m2K_W { get; init; } = SurfaceResistance.InsideHorizontal_m2K_W;

    /// <summary>Relative humidity at the start, over water.</summary>
    public double InitialHumidity_frac { get; init; } = 0.4;
}
