using ColdSim.Model.Cylinder;
using ColdSim.Physics.Propane;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Cylinder;

public class CylinderContentsTests
{
    [Fact]
    public void While_there_is_liquid_the_pressure_is_that_of_boiling()
        => Gen.Select(Gen.Double[0.005, 0.2], Gen.Double[0.05, 0.42], Gen.Double[195, 330]).Sample((volume_m3, fill, t_K) =>
        {
            CylinderContents c = CylinderContents.Of(fill * 1000 * volume_m3, volume_m3, t_K);
            return c.HasLiquid && c.LiquidVolume_m3 > 0 && Math.Abs(c.Pressure_Pa / PropaneSaturation.Pressure_Pa(t_K) - 1) < 1e-12;
        });

    [Fact]
    public void Pressure_and_energy_do_not_jump_where_the_last_liquid_goes()
        => Gen.Select(Gen.Double[0.005, 0.2], Gen.Double[195, 350]).Sample((volume_m3, t_K) =>
        {
            double mass_kg = volume_m3 / SaturationTable.At(t_K).VapourVolume_m3_kg;
            CylinderContents wet = In(true, mass_kg, volume_m3, t_K);
            CylinderContents dry = In(false, mass_kg, volume_m3, t_K);
            Assert.Equal(1, dry.Pressure_Pa / wet.Pressure_Pa, 1e-7);
            Assert.Equal(1, dry.InternalEnergy_J / wet.InternalEnergy_J, 1e-7);
            Assert.Equal(1, dry.VapourEnthalpy_J_kg / wet.VapourEnthalpy_J_kg, 1e-7);
            Assert.Equal(0, wet.LiquidVolume_m3 / volume_m3, 1e-12);
        });

    [Fact]
    public void Vapour_alone_has_the_slopes_of_its_own_energy()
        => Gen.Select(Gen.Double[220, 340], Gen.Double[0.05, 0.95]).Sample((t_K, part) =>
        {
            const double volume_m3 = 0.02, h = 1e-3;
            double mass_kg = part * volume_m3 / SaturationTable.At(t_K).VapourVolume_m3_kg, dm = 1e-5 * mass_kg;
            CylinderContents c = CylinderContents.Of(mass_kg, volume_m3, t_K);
            double Energy(double m, double t) => In(false, m, volume_m3, t).InternalEnergy_J;
            double byTemperature = (Energy(mass_kg, t_K + h) - Energy(mass_kg, t_K - h)) / (2 * h);
            double byMass = (Energy(mass_kg + dm, t_K) - Energy(mass_kg - dm, t_K)) / (2 * dm);
            Assert.False(c.HasLiquid);
            Assert.Equal(1, c.HeatCapacity_J_K / byTemperature, 1e-5);
            Assert.Equal(1, c.DrawHeat_J_kg / (c.VapourEnthalpy_J_kg - byMass), 1e-4);
        });

    [Fact]
    public void Less_propane_never_has_more_pressure()
        => Gen.Select(Gen.Double[200, 340], Gen.Double[1e-4, 0.4], Gen.Double[0.01, 1]).Sample((t_K, fill, part) =>
            CylinderContents.Of(fill * part * 20, 0.02, t_K).Pressure_Pa <= CylinderContents.Of(fill * 20, 0.02, t_K).Pressure_Pa * (1 + 1e-9));

    [Fact]
    public void The_energy_of_a_draw_closes_with_liquid_and_without()
        => Gen.Select(Some.Size, Gen.Double[0.01, 1], Gen.Double[230, 310], Gen.Double[1e-5, 4e-4], Gen.Double[0, 6]).Sample((size, fill, t_K, draw_kg_s, ua_W_K) =>
        {
            CylinderBody body = new(Some.Cylinder(size));
            double mass_kg = fill * size.LegalFill_kg;
            bool wet = body.Contents(mass_kg, t_K).HasLiquid;
            // Draw at most a twentieth, and stay in one phase: the heat of a draw jumps between them.
            double time_s = Math.Min(0.05 * mass_kg / draw_kg_s, 7200);
            Drawn end = ForcedDraw.After(body, mass_kg, t_K, draw_kg_s, t => ua_W_K * (t_K + 5 - t), time_s, 200);
            if (body.Contents(end.Mass_kg, end.T_K).HasLiquid != wet) return;
            double change_J = body.StoredEnergy_J(end.Mass_kg, end.T_K) - body.StoredEnergy_J(mass_kg, t_K);
            Assert.Equal(change_J, end.Heat_J - end.Enthalpy_J, 1e-6 * (1000 + end.Enthalpy_J));
        }, iter: 60);

    [Fact]
    public void Empty_contents_have_no_pressure_and_raise_no_error()
    {
        CylinderContents c = CylinderContents.Of(0, 0.02, 260);
        Assert.False(c.HasLiquid);
        Assert.InRange(c.Pressure_Pa, 0, 1);
        Assert.Equal(0, c.InternalEnergy_J);
        Assert.True(double.IsFinite(c.DrawHeat_J_kg));
    }

    private static CylinderContents In(bool withLiquid, double mass_kg, double volume_m3, double t_K)
    {
        CylinderContents.In(withLiquid, mass_kg, volume_m3, t_K, out CylinderContents contents);
        return contents;
    }
}
