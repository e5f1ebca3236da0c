using System.Globalization;
using ColdSim.Model.Arrangement;
using ColdSim.Model.Blanket;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Furnace;
using ColdSim.Model.Gas;
using ColdSim.Model.Site;
using ColdSim.Model.Supply;
using ColdSim.Model.Thermostat;
using ColdSim.Model.Weather;
using ColdSim.Tests.Model.Cylinder;
using Xunit;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Tests.Docs;

/// <summary>The tables of docs/model.md that a rebuild needs and that the code declares.</summary>
[Trait("Category", "Docs")]
public class ModelPageTests
{
    [Fact]
    public void The_generated_tables_of_docs_model_md_are_current() => GeneratedPage.AssertCurrent("model.md", new Dictionary<string, string>
    {
        ["sizes"] = Table(
            ["size", "water capacity [L]", "outside diameter [mm]", "wall [mm]", "shell [kg]", "tare [kg]", "legal filling [kg]"],
            StandardSize.All.Select(s => (string[])
            [
                s.Name + (s.Orientation == Orientation.Upright ? "" : ", lying"), Shown(1e3 * s.Volume_m3, "0.000"), Shown(1e3 * s.OutsideDiameter_m, "0.0"),
                Shown(1e3 * s.WallThickness_m, "0.0"), Shown(s.ShellMass_kg, "0.0"), Shown(s.Tare_kg, "0.00"), Shown(s.LegalFill_kg, "0.000"),
            ])),
        ["blanket shares"] = Table(
            ["fill", .. BlanketSizes.Select(s => s + (StandardSize.Find(s)!.Orientation == Orientation.Upright ? "" : ", lying"))],
            BlanketFills.Select(f => (string[])[f.Called, .. BlanketSizes.Select(s => BlanketShare(s, f.Fill))])),
        ["instant"] = Table(["symbol", "what", "value"], WorkedInstant.Rows()),
        ["defaults"] = Table(["part", "what", "value"], Defaults().Select(d => (string[])[d.Part, d.What, d.Value])),
    });

    private static string[] BlanketSizes { get; } = ["20 lb", "30 lb", "40 lb", "100 lb", "20 gal"];

    private static (double Fill, string Called)[] BlanketFills { get; } = [(1, "full"), (0.5, "half"), (0.25, "a quarter"), (0.1, "a tenth")];

    // What the page says above the table: liquid at -30 °C, air at -20 °C, still, a draw of 0.24 g/s.
    private static string BlanketShare(string size, double fill)
    {
        const double Liquid_K = 243.15, Power_W = 100, Draw_kg_s = 2.4e-4;
        CylinderSpecification full = StandardSize.Find(size)!.Full();
        CylinderSpecification under = full with
        {
            Contents_kg = fill * full.LegalFill_kg,
            Surroundings = Some.Sheltered,
            Blanket = new BlanketSpecification { Power_W = Power_W, StuckOn = true },
        };
        HeatCoupling coupling = HeatCoupling.At(new CylinderBody(under), Some.Weather(253.15), under.Contents_kg, Liquid_K, default);
        double excess_K = coupling.Wall.SteadyExcess_K(Liquid_K, Power_W, Draw_kg_s);
        return $"{Shown(100 * coupling.BlanketShare_frac(Draw_kg_s), "0")} %, {Shown(excess_K, "0")}, {Shown(coupling.Wall.Hottest_factor * excess_K, "0")} K";
    }

    private static IEnumerable<(string Part, string What, string Value)> Defaults()
    {
        CylinderSpecification cylinder = StandardSize.All[0].Full();
        CylinderSurroundings around = new();
        yield return ("2", "wall's conductivity", $"{Shown(cylinder.WallConductivity_W_mK)} W/(m·K)");
        yield return ("2", "shell's specific heat", $"{Shown(cylinder.MetalHeat_J_kgK)} J/(kg·K)");
        yield return ("2", "relief valve", $"{Shown(cylinder.ReliefPressure_Pa / Psi_Pa)} psi");
        yield return ("2", "wind at the cylinder, of the weather's", Shown(around.WindExposure_frac));
        yield return ("2", "`sky_view`, `sun_exposure`", $"{Shown(around.SkyView_frac)}, {Shown(around.SunExposure_frac)}");
        yield return ("2", "emissivity, absorptance", $"{Shown(around.Emissivity_frac)}, {Shown(around.SolarAbsorptance_frac)}");
        yield return ("2", "inside film", $"{Shown(around.InsideFilm_W_m2K)} W/(m²·K)");
        BlanketSpecification blanket = new() { Power_W = 0 };
        yield return ("2", "blanket: coverage, insulation", $"{Shown(blanket.Coverage_frac)}, {Shown(blanket.Insulation_m2K_W)} m²·K/W");
        yield return ("2", "blanket: on below, off above", $"{Shown(blanket.On_K - ZeroCelsius_K)} °C, {Shown(blanket.Off_K - ZeroCelsius_K)} °C");
        RegulatorSpecification regulator = new();
        yield return ("3", "rated flow, at an inlet of", $"{Shown(regulator.RatedFlow_W / BtuPerHour_W)} BTU/h, {Shown(regulator.RatedInlet_Pa / Psi_Pa)} psi");
        yield return ("3", "set point, droop", $"{Shown(regulator.SetPoint_Pa / InchOfWater_Pa)}, {Shown(regulator.Droop_Pa / InchOfWater_Pa)} inH2O");
        yield return ("3", "between the stages, droop", $"{Shown(regulator.Intermediate_Pa / Psi_Pa)}, {Shown(regulator.IntermediateDroop_Pa / Psi_Pa)} psi");
        yield return ("3", "minimum inlet, of a changeover", $"{Shown(regulator.MinimumInletOf_Pa(false) / Psi_Pa)} psi, {Shown(regulator.MinimumInletOf_Pa(true) / Psi_Pa)} psi");
        yield return ("3", "pigtail loss, hose loss", $"{Shown(regulator.PigtailLoss_Pa)} Pa, {Shown(regulator.HoseLoss_Pa)} Pa");
        AutomaticChangeover changeover = new();
        yield return ("3", "reserve side of a changeover, droop", $"{Shown(changeover.ReserveSetting_Pa / Psi_Pa)}, {Shown(changeover.ReserveDroop_Pa / Psi_Pa)} psi");
        OneAtATime byHand = new();
        yield return ("3", "changed by hand: noticed after, between walks", $"{Shown(byHand.NoticedAfter_s / 60)} min, {Shown(byHand.BetweenWalks_s / 60)} min");
        ThermostatSpecification thermostat = new();
        yield return ("5", "set point by day, by night", $"{Shown(thermostat.DaySetPoint_K - ZeroCelsius_K)} °C, {Shown(thermostat.NightSetPoint_K - ZeroCelsius_K)} °C");
        yield return ("5", "differential, sensor's lag", $"{Shown(thermostat.Differential_K)} K, {Shown(thermostat.SensorLag_s)} s");
        yield return ("5", "shortest call, shortest pause", $"{Shown(thermostat.MinimumRun_s)} s, {Shown(thermostat.MinimumOff_s)} s");
        FurnaceSpecification furnace = new() { Input_W = 1 };
        yield return ("5", "efficiency", Shown(furnace.Efficiency_frac));
        yield return (
            "5", "full, ignition, drop-out pressure",
            $"{Shown(furnace.FullPressure_Pa / InchOfWater_Pa)}, {Shown(furnace.IgnitionPressure_Pa / InchOfWater_Pa)}, {Shown(furnace.DropOutPressure_Pa / InchOfWater_Pa)} inH2O");
        yield return (
            "5", "fan before, trial, fan between tries, fan after",
            $"{Shown(furnace.PrePurge_s)}, {Shown(furnace.TrialForIgnition_s)}, {Shown(furnace.RetryPurge_s)}, {Shown(furnace.PostPurge_s)} s");
        yield return ("5", "tries, lockout", $"{Shown(furnace.Tries)}, {Shown(furnace.Lockout_s)} s");
        WeatherDefaults weather = new();
        yield return (
            "6", "wind, humidity over water, cloud where the weather has none",
            $"{Shown(weather.Wind_m_s)} m/s, {Shown(weather.RelativeHumidity_frac)}, {Shown(weather.Cloud_frac)}");
        yield return ("6", "ground's albedo", Shown(new SiteSpecification().GroundAlbedo_frac));
        yield return ("1", "heating value, gross", $"{Shown(new GasSpecification().HeatingValue_J_kg / 1e6)} MJ/kg");
    }

    private static string Shown(double value, string format = "0.#####") => value.ToString(format, CultureInfo.InvariantCulture);

    private static string Table(string[] headings, IEnumerable<string[]> rows)
        => string.Concat(rows.Prepend([.. headings.Select(_ => "---")]).Prepend(headings).Select(r => $"| {string.Join(" | ", r)} |\n"));
}
