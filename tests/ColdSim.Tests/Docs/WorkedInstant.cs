using System.Globalization;
using ColdSim.Model.Cylinder;
using ColdSim.Model.Supply;
using ColdSim.Model.Weather;
using ColdSim.Physics.HeatTransfer;
using ColdSim.Physics.MoistAir;
using ColdSim.Physics.Propane;
using ColdSim.Physics.SunAndSky;
using Xunit;
using static ColdSim.Physics.Units.ConversionFactors;

namespace ColdSim.Tests.Docs;

/// <summary>One instant of one cylinder, number by number from the weather to the flow, as docs/model.md shows it.</summary>
internal static class WorkedInstant
{
    private const double Air_K = 258.15, Dew_K = 255.15, Cloud_frac = 0.5, Wind_m_s = 4, Air_Pa = 90_000, Liquid_K = 238.15, Input_W = 20_000 * BtuPerHour_W;

    /// <summary>Its rows: symbol, what it is, value.</summary>
    public static IReadOnlyList<string[]> Rows()
    {
        List<string[]> rows = [];
        void Row(string symbol, string what, double value, string format, string unit)
            => rows.Add([symbol, what, $"{value.ToString(format, CultureInfo.InvariantCulture)}{(unit.Length == 0 ? "" : " " + unit)}"]);

        CylinderSpecification cylinder = StandardSize.Find("20 lb")!.Full();
        cylinder = cylinder with { Contents_kg = 0.5 * cylinder.LegalFill_kg };
        CylinderBody body = new(cylinder);
        CylinderSurroundings around = cylinder.Surroundings;
        WeatherSample weather = new(Air_K, Wind_m_s, MagnusFormula.OverWater_Pa(Dew_K), SkyTemperature.BerdahlMartin_K(Air_K, Dew_K, Cloud_frac), Air_Pa, 0, 0);
        FrostLayer frost = new(0.15, 0.001);

        AirFilm air = new(Liquid_K, Air_K, Air_Pa);
        double diameter_m = cylinder.OutsideDiameter_m, height_m = body.Vessel.Height_m, conductivity = air.Conductivity_W_mK;
        double rayleigh = air.Rayleigh(Liquid_K - Air_K, height_m), natural = NaturalConvection.VerticalPlateInAir(rayleigh) * conductivity / height_m;
        double reynolds = air.Reynolds(Wind_m_s * around.WindExposure_frac, diameter_m), forced = ForcedConvection.CrossFlowInAir(reynolds) * conductivity / diameter_m;
        Row("Ra", "on the height, air at the mean of liquid and air", rayleigh, "0.000e0", "");
        Row("h_nat", "upright wall", natural, "0.000", "W/(m²·K)");
        Row("Re", "on the diameter, at 0.3 of the wind", reynolds, "0", "");
        Row("h_wind", "across the cylinder", forced, "0.000", "W/(m²·K)");
        Row("T_sky", "Berdahl and Martin", weather.Sky_K, "0.000", "K");
        double resistance = frost.Resistance_m2K_W;
        Row("δ/k", "1 mm of frost of 150 kg/m³", resistance, "0.00000", "m²·K/W");
        ExternalConvection convection = new(body, weather, Liquid_K);
        Assert.Equal(ForcedConvection.Blend(forced, natural, 3), convection.OfWall_W_m2K, 1e-9);
        ExternalHeatTransfer film = new(body, weather, convection, Liquid_K, resistance);
        Row("h_c", "both, at the wall's temperature", convection.OfWall_W_m2K, "0.000", "W/(m²·K)");
        Row("T_s", "outer surface by the one pass of point 3", film.Surface_K, "0.000", "K");
        Row("h_c", "at that surface", film.Convection_W_m2K, "0.000", "W/(m²·K)");
        Row("h_r", "at that surface", film.Radiation_W_m2K, "0.000", "W/(m²·K)");
        double behind = 1 / (resistance + 1 / around.InsideFilm_W_m2K);
        FrostExchange exchange = FrostExchange.At(weather, film, Liquid_K, behind, frost);
        Row("T_s", "surface that closes the balance with latent heat", exchange.Surface_K, "0.000", "K");
        Row("m″", "vapour that freezes to it", 1e6 * exchange.Flux_kg_m2s, "0.000", "mg/(m²·s)");
        double environment_K = film.Environment_K(exchange.Heat_W_m2);
        Row("T_env", "sol-air temperature, latent heat in it", environment_K, "0.000", "K");
        CylinderContents contents = body.Contents(cylinder.Contents_kg, Liquid_K);
        Row("p", "saturation", contents.Pressure_Pa, "0", "Pa");
        Row("m′", "liquid of the 4.534 kg", contents.LiquidMass_kg, "0.0000", "kg");
        double level_m = body.Vessel.LiquidLevel_m(contents.LiquidVolume_m3), wetted_m2 = body.Vessel.WettedArea_m2(level_m), line_m = body.Vessel.FinRootLength_m(level_m);
        Row("y", "level over the bottom", level_m, "0.00000", "m");
        Row("A_wet", "wetted outside wall", wetted_m2, "0.00000", "m²");
        double dry = 1 / (1 / film.Total_W_m2K + resistance), wet = 1 / (1 / dry + 1 / around.InsideFilm_W_m2K);
        double fin_m = Fin.EffectiveLength_m(dry, around.InsideFilm_W_m2K, cylinder.WallConductivity_W_mK, cylinder.WallThickness_m, body.Vessel.DryFinLength_m(level_m));
        Row("U_dry", "film and frost", dry, "0.000", "W/(m²·K)");
        Row("U_wet", "and inside film", wet, "0.000", "W/(m²·K)");
        Row("l", "what the dry wall is worth as a fin", fin_m, "0.00000", "m");
        double conductance = wet * (wetted_m2 + fin_m * line_m), heat_W = conductance * (environment_K - Liquid_K);
        Row("G", "wall and fin", conductance, "0.0000", "W/K");
        Row("Q", "into liquid and shell", heat_W, "0.00", "W");
        HeatCoupling coupling = HeatCoupling.At(body, weather, contents, Liquid_K, frost);
        Assert.Equal(conductance, coupling.Conductance_W_K, 1e-9);
        Assert.Equal(heat_W, coupling.Heat_W(Liquid_K), 1e-6);

        double heating_J_kg = 50.33e6, full_kg_s = Input_W / heating_J_kg, fullDelivery_Pa = 10.5 * InchOfWater_Pa;
        TwoStageRegulator regulator = new(new RegulatorSpecification(), heating_J_kg);
        GasSupply supply = new(regulator, [new GasLoad(full_kg_s, fullDelivery_Pa)]);
        supply.Set(0, true);
        FeedPressures feed = new(contents.Pressure_Pa, 0, Liquid_K);
        SupplyPoint point = supply.At(feed, Air_Pa);
        Row("p − p_air", "before the regulator", (contents.Pressure_Pa - Air_Pa) / Psi_Pa, "0.000", "psi");
        Row("p_out", "behind it, where furnace and regulator agree", supply.Delivery_Pa(point, feed, Air_Pa) / InchOfWater_Pa, "0.000", "inH2O");
        Row("ṁ", "flow, of 0.11646 g/s that 20,000 BTU/h are", 1e3 * point.Flow_kg_s, "0.00000", "g/s");
        Assert.Equal(0.11646e-3, full_kg_s, 5e-9);
        Row("L", "heat per mass drawn, h_fg ρ′/(ρ′ − ρ″)", contents.DrawHeat_J_kg, "0", "J/kg");
        Row("C + m_w c_w", "contents and shell", contents.HeatCapacity_J_K + body.ShellHeat_J_K, "0", "J/K");
        Row("dT/dt", "liquid and shell", 3600 * (heat_W - point.Flow_kg_s * contents.DrawHeat_J_kg) / (contents.HeatCapacity_J_K + body.ShellHeat_J_K), "0.000", "K/h");
        return rows;
    }
}
