using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.Mixtures;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using ColdSim.Planning.Capacity;
using ColdSim.Planning.Quick;

namespace ColdSim.Planning.Diagnosis;

/// <summary>The states in which the model sees a cylinder: the four faults of the cylinder, and one without a fault.</summary>
public enum CylinderFault
{
    /// <summary>None; what fails is elsewhere.</summary>
    None,

    /// <summary>Too cold for the draw.</summary>
    TooCold,

    /// <summary>Without liquid.</summary>
    Empty,

    /// <summary>With butane for the most part.</summary>
    ButaneLeft,

    /// <summary>Past its legal filling.</summary>
    Overfilled,
}

/// <summary>What a cylinder should show in one of its states. SI units.</summary>
/// <param name="Fault">Which.</param>
/// <param name="Fill_frac">Part of the legal filling.</param>
/// <param name="Liquid_K">Temperature of the liquid, and of the wall below its line. [K]</param>
/// <param name="Pressure_Pa">Gauge pressure. [Pa]</param>
/// <param name="Level_m">Height of the liquid above the body's lowest point; 0 without liquid. [m]</param>
public sealed record CylinderState(CylinderFault Fault, double Fill_frac, double Liquid_K, double Pressure_Pa, double Level_m);

/// <summary>Works out what a cylinder should show from the rig, the air, the fill and the recent use, with the model's own
/// equations.</summary>
/// <remarks>
/// The liquid goes from the air's temperature towards the one at which the surroundings replace the heat of the mean draw, with the time
/// constant of contents and shell. That is the
/// heat balance of the engine with constant coefficients, which is near enough for readings that are known to a few degrees.
/// </remarks>
public sealed class CylinderExpectation
{
    // What a draw leaves behind of a mixture by the time it fails in the cold: assumed.
    private static readonly GasMasses ButaneRich = new(0.15, 0.60, 0.25);

    private const double Probe_K = 10;

    private readonly DiagnosisRig _rig;
    private readonly CylinderBody _body;
    private readonly double _air_Pa;
    private readonly double _heating_J_kg = new Model.Gas.GasSpecification().PlateHeatingValue_J_kg;

    /// <summary>Prepares it for a rig.</summary>
    /// <param name="rig">The rig.</param>
    public CylinderExpectation(DiagnosisRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        _rig = rig;
        _body = new CylinderBody(rig.Cylinder with { Blanket = null });
        _air_Pa = StandardAtmosphere.Pressure_Pa(rig.Elevation_m);
        double flow_kg_s = rig.Furnace_W / _heating_J_kg;
        double needed_K = SteadySupply.AllowedLiquid_K(
            new TwoStageRegulator(rig.Regulator, _heating_J_kg), flow_kg_s, DrawConditions.UsualDelivery_Pa, _air_Pa);
        double plate_Pa = rig.Regulator.MinimumInletOf_Pa(changeover: false);
        Least_Pa = double.IsNaN(needed_K) ? plate_Pa : PropaneSaturation.Pressure_Pa(needed_K) - _air_Pa;
        Sure_Pa = Math.Max(Least_Pa, plate_Pa);
        Fails_Pa = 0.5 * (Least_Pa + Sure_Pa);
        Fails_K = PropaneSaturation.Temperature_K(Fails_Pa + _air_Pa);
    }

    /// <summary>The least gauge pressure that feeds the furnace if the regulator's spring law goes on below its plate. [Pa]</summary>
    public double Least_Pa { get; }

    /// <summary>The gauge pressure that surely feeds it: the least inlet of the regulator's plate, or more. [Pa]</summary>
    public double Sure_Pa { get; }

    /// <summary>The gauge pressure at which it fails, in the middle of the two. [Pa]</summary>
    public double Fails_Pa { get; }

    /// <summary>The liquid's temperature then. [K]</summary>
    public double Fails_K { get; }

    /// <summary>Height of the body inside. [m]</summary>
    public double Height_m => _body.Vessel.FullLevel_m;

    /// <summary>The liquid after the recent use, however cold that makes it. [K]</summary>
    /// <param name="air_K">Air temperature. [K]</param>
    /// <param name="fill_frac">Part of the legal filling.</param>
    public double Drawn_K(double air_K, double fill_frac)
    {
        double mass_kg = fill_frac * _rig.Cylinder.LegalFill_kg, probe_K = Clamp_K(air_K - Probe_K);
        CylinderContents contents = _body.Contents(mass_kg, probe_K);
        if (!contents.HasLiquid) return air_K;
        WeatherSample air = new(air_K, QuickNight.Wind_m_s, 0, air_K, _air_Pa, 0, 0);
        double conductance_W_K = SteadySupply.Draw_kg_s(_body, air, contents, probe_K, 0,
            default) * contents.DrawHeat_J_kg / (air_K - probe_K);
        double cooling_W = _rig.Use_frac * _rig.Furnace_W / _heating_J_kg * contents.DrawHeat_J_kg;
        double time_s = (contents.HeatCapacity_J_K + _body.ShellHeat_J_K) / conductance_W_K;
        return air_K - cooling_W / conductance_W_K * (1 - Math.Exp(-DiagnosisRig.Use_s / time_s));
    }

    /// <summary>What should be seen of a fault, in a cylinder that has rested for a part of the way back to the air's
    /// temperature.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="air_K">Air temperature. [K]</param>
    /// <param name="fill_frac">Part of the legal filling.</param>
    /// <param name="drawn_K">The liquid after the recent use. [K]</param>
    /// <param name="rested_frac">0 in use until now, 1 as warm as the air.</param>
    public CylinderState Of(CylinderFault fault, double air_K, double fill_frac, double drawn_K, double rested_frac)
    {
        if (fault == CylinderFault.Empty)
            return new(fault, fill_frac, air_K, 0.5 * Fails_Pa, 0);

        // Where the furnace fails the draw ends, so the liquid gets no colder; and a cylinder that is too cold is as cold as that.
        double coldest_K = fault == CylinderFault.TooCold ? Math.Min(Fails_K, air_K) : Math.Max(Fails_K, drawn_K);
        double liquid_K = Clamp_K(coldest_K + rested_frac * Math.Max(0, air_K - coldest_K));
        double p_Pa = fault == CylinderFault.ButaneLeft ? MixedContents.BubblePressure_Pa(ButaneRich, liquid_K)
            : PropaneSaturation.Pressure_Pa(liquid_K);
        return new(fault, fill_frac, liquid_K, p_Pa - _air_Pa, Level_m(fill_frac, liquid_K));
    }

    /// <summary>The liquid's height at a fill. [m]</summary>
    private double Level_m(double fill_frac, double liquid_K)
    {
        double volume_m3 = new TwoPhaseContents(fill_frac * _rig.Cylinder.LegalFill_kg, _body.Vessel.Volume_m3, liquid_K).LiquidVolume_m3;
        return _body.Vessel.LiquidLevel_m(Math.Clamp(volume_m3, 0, _body.Vessel.Volume_m3));
    }

    private static double Clamp_K(double t_K) => Math.Clamp(t_K, SaturationTable.Lowest_K, SaturationTable.Highest_K);
}
