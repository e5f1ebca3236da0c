using ColdSim.Physics.Fluids;

namespace ColdSim.Physics.Mixtures;

/// <summary>A mixed gas without liquid: each species as it is among its own kind, as far from saturation as the whole is.</summary>
/// <remarks>
/// The degree of saturation is s = Σ ρ/ρ″, 1 where the first drop forms (Raoult). Each species has its own equation at the density s ρ″,
/// pressures add in the parts x = (ρ/ρ″)/s, energies in masses. So pressure and energy go on without a jump from the state with liquid, a
/// pure gas comes out as its own equation says, and a thin one as an ideal mixture.
/// </remarks>
internal static class VapourAlone
{
    private static readonly Fluid[] Fluids = [.. GasSpecies.All.Select(s => s.Fluid)];
    private static readonly SaturationLine[] Lines = [.. GasSpecies.All.Select(s => s.Fluid.Saturation)];

    /// <summary>The degree of saturation: above 1 there is liquid.</summary>
    public static double Saturation(in GasMasses gas, double volume_m3, double t_K)
    {
        double sum_m3 = 0;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            if (gas[i] > 0) sum_m3 += gas[i] * Lines[i].At(Math.Min(t_K, SaturationLine.Highest_K)).VapourVolume_m3_kg;
        }

        return sum_m3 / volume_m3;
    }

    public static MixedContents Of(in GasMasses gas, double volume_m3, double t_K)
    {
        Span<SaturatedPhases> phases = stackalloc SaturatedPhases[GasSpecies.Count];
        double saturated = 0, byTemperature_K = 0, mass_kg = 0;

        // Hotter than the saturation line goes, the degree of saturation is counted from the line's end.
        double line_K = Math.Min(t_K, SaturationLine.Highest_K);
        bool isPastLine = t_K > line_K;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            if (gas[i] <= 0) continue;
            phases[i] = Lines[i].At(line_K);
            mass_kg += gas[i];
            saturated += gas[i] * phases[i].VapourVolume_m3_kg / volume_m3;
            if (!isPastLine) byTemperature_K += gas[i] * phases[i].VapourVolumeSlope / volume_m3;
        }

        double pressure_Pa = 0, energy_J = 0, capacity_J_K = 0, stiffness_Pa = 0, crowding_J = 0, volumeByMass = 0;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            if (gas[i] <= 0) continue;
            double volume_m3_kg = phases[i].VapourVolume_m3_kg, full_kg_m3 = 1 / volume_m3_kg;
            double x = gas[i] * volume_m3_kg / (volume_m3 * saturated);
            FluidState own = Fluids[i].VapourAt(t_K, saturated * full_kg_m3);
            double thinned_kg_m3K = isPastLine
                ? 0
                : byTemperature_K * full_kg_m3 - saturated * phases[i].VapourVolumeSlope * full_kg_m3 * full_kg_m3;
            pressure_Pa += x * own.Pressure_Pa;
            stiffness_Pa += x * own.PressureByDensity * own.Density_kg_m3;
            energy_J += gas[i] * own.InternalEnergy_J_kg;
            capacity_J_K += gas[i] * (own.Cv_J_kgK + own.InternalEnergyByDensity * thinned_kg_m3K);
            crowding_J += gas[i] * own.InternalEnergyByDensity * full_kg_m3;
            volumeByMass += gas[i] / mass_kg * volume_m3_kg / volume_m3;
        }

        double enthalpy_J_kg = (energy_J + pressure_Pa * volume_m3) / mass_kg;
        double energyByMass_J_kg = energy_J / mass_kg + crowding_J * volumeByMass;
        GasMasses drop = new(
            gas.Propane * phases[0].VapourVolume_m3_kg * Fluids[0].MolarMass_kg_mol,
            gas.NormalButane * phases[1].VapourVolume_m3_kg * Fluids[1].MolarMass_kg_mol,
            gas.Isobutane * phases[2].VapourVolume_m3_kg * Fluids[2].MolarMass_kg_mol);
        return new MixedContents(
            pressure_Pa, mass_kg * (1 - 1 / saturated), 0, gas.Parts(), drop.Parts(), mass_kg / volume_m3,
            enthalpy_J_kg, enthalpy_J_kg - energyByMass_J_kg, capacity_J_K, energy_J, stiffness_Pa / mass_kg);
    }
}
