using ColdSim.Physics.Fluids;

namespace ColdSim.Physics.Mixtures;

/// <summary>A mixed gas with liquid: Raoult's law with each species' own saturation curve, and volumes that add up.</summary>
/// <remarks>
/// The liquid is N moles in the parts x; each species' vapour has its saturated density times x, so that a pure gas comes out as its own
/// equation says. With N = (1 − q) c λ and a vapour space of q λ (c a round molar density that makes q nearly the part of the vessel
/// above the liquid) each species divides between the phases by q alone, and q is the one root of Σ m g(q) = V, which grows
/// steadily with q. docs/model.md, "Mixed gas", derives it. All derivatives are those of the implicit function, exact.
/// </remarks>
internal static class LiquidWithVapour
{
    // About the molar density of the liquids; any value gives the same answer. [mol/m³]
    private const double Round_mol_m3 = 1e4;
    private const double LowestSpace = -4;
    private const double CloseEnough = 1e-10;
    private const int MostTurns = 60;

    private static readonly SaturationLine[] Lines = [.. GasSpecies.All.Select(s => s.Fluid.Saturation)];
    private static readonly double[] RoundDensity_kg_m3 = [.. GasSpecies.All.Select(s => Round_mol_m3 * s.Fluid.MolarMass_kg_mol)];

    public static MixedContents Of(in GasMasses gas, double volume_m3, double t_K)
    {
        Span<SaturatedPhases> phases = stackalloc SaturatedPhases[GasSpecies.Count];
        Span<Share> shares = stackalloc Share[GasSpecies.Count];
        double liquid_m3 = 0, pole = double.PositiveInfinity;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            if (gas[i] <= 0) continue;
            phases[i] = Lines[i].At(t_K);
            shares[i] = new Share(gas[i], RoundDensity_kg_m3[i], phases[i]);
            liquid_m3 += gas[i] * phases[i].LiquidVolume_m3_kg;
            pole = Math.Min(pole, shares[i].Pole);
        }

        double q = Space(shares, volume_m3, Math.Clamp(1 - liquid_m3 / volume_m3, LowestSpace, 1), pole);
        return At(shares, phases, q, volume_m3, t_K);
    }

    // Halley's method, which is exact for a single species, kept inside a bracket.
    private static double Space(ReadOnlySpan<Share> shares, double volume_m3, double q, double pole)
    {
        double low = LowestSpace, high = pole;
        for (int turn = 0; turn < MostTurns; turn++)
        {
            double past_m3 = -volume_m3, slope = 0, bend = 0;
            foreach (ref readonly Share share in shares)
            {
                if (share.Mass_kg <= 0) continue;
                double per = 1 / share.Density(q);
                double term = share.Mass_kg * share.Slope * per * per;
                past_m3 += share.Mass_kg * share.Filled(q) * per;
                slope += term;
                bend += 2 * term * share.Fall * per;
            }

            if (past_m3 < 0) low = q;
            else high = q;
            double step = -2 * past_m3 * slope / (2 * slope * slope - past_m3 * bend);
            double next = q + step;
            if (Math.Abs(step) <= CloseEnough) return next;
            q = next > low && next < high ? next : 0.5 * (low + high);
        }

        return q;
    }

    private static MixedContents At(ReadOnlySpan<Share> shares, ReadOnlySpan<SaturatedPhases> phases, double q, double volume_m3, double t_K)
    {
        Span<double> part = stackalloc double[GasSpecies.Count];
        Span<double> liquid = stackalloc double[GasSpecies.Count];
        Span<double> vapour = stackalloc double[GasSpecies.Count];
        double scale = 0, slope = 0, byTemperature = 0, energy_J = 0, capacity_J_K = 0, evaporating_J = 0, evaporated_J_K = 0;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            ref readonly Share share = ref shares[i];
            if (share.Mass_kg <= 0) continue;
            ref readonly SaturatedPhases s = ref phases[i];
            double per = 1 / share.Density(q), perSquare = share.Mass_kg * per * per;
            double densitySlope = -s.VapourVolumeSlope * share.Vapour_kg_m3 * share.Vapour_kg_m3;
            part[i] = share.Mass_kg * per;
            liquid[i] = part[i] * share.Round_kg_m3 * (1 - q);
            vapour[i] = part[i] * share.Vapour_kg_m3 * q;
            scale += part[i];
            slope += perSquare * share.Slope;
            byTemperature += part[i] * share.Round_kg_m3 * s.LiquidVolumeSlope * (1 - q) - perSquare * share.Filled(q) * densitySlope * q;
            energy_J += liquid[i] * s.LiquidEnergy_J_kg + vapour[i] * s.VapourEnergy_J_kg;
            capacity_J_K += liquid[i] * s.LiquidEnergySlope + vapour[i] * s.VapourEnergySlope;
            double latent_J_kg = s.VapourEnergy_J_kg - s.LiquidEnergy_J_kg;
            evaporating_J += perSquare * latent_J_kg * share.Vapour_kg_m3 * share.Round_kg_m3;
            evaporated_J_K += perSquare * latent_J_kg * q * share.Round_kg_m3 * (1 - q) * densitySlope;
        }

        capacity_J_K += evaporated_J_K - evaporating_J * byTemperature / slope;
        double pressure_Pa = 0, density_kg_m3 = 0, liquid_kg = 0, enthalpy_J_m3 = 0;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            if (shares[i].Mass_kg <= 0) continue;
            double x = part[i] / scale, partial_kg_m3 = x * shares[i].Vapour_kg_m3;
            liquid_kg += liquid[i];
            density_kg_m3 += partial_kg_m3;
            pressure_Pa += x * phases[i].Pressure_Pa;
            enthalpy_J_m3 += partial_kg_m3 * phases[i].VapourEnergy_J_kg;
        }

        // What a mass of this vapour put in does to energy and pressure.
        double energyByMass_J_kg = 0, filledByMass = 0;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            ref readonly Share share = ref shares[i];
            if (share.Mass_kg <= 0) continue;
            double weight = part[i] / scale * share.Vapour_kg_m3 / density_kg_m3, per = 1 / share.Density(q);
            energyByMass_J_kg += weight * per
                * (share.Round_kg_m3 * (1 - q) * phases[i].LiquidEnergy_J_kg + share.Vapour_kg_m3 * q * phases[i].VapourEnergy_J_kg);
            filledByMass += weight * share.Filled(q) * per;
        }

        double spaceByMass = -filledByMass / slope;
        energyByMass_J_kg += evaporating_J * spaceByMass;
        double scaleByMass = 0, pressureByMass = 0;
        for (int i = 0; i < GasSpecies.Count; i++)
        {
            ref readonly Share share = ref shares[i];
            if (share.Mass_kg <= 0) continue;
            double weight = part[i] / scale * share.Vapour_kg_m3 / density_kg_m3, per = 1 / share.Density(q);
            double partByMass = weight * per + part[i] * share.Fall * per * spaceByMass;
            scaleByMass += partByMass;
            pressureByMass += partByMass * phases[i].Pressure_Pa;
        }

        double enthalpy_J_kg = (enthalpy_J_m3 + pressure_Pa) / density_kg_m3;
        double space_m3 = q * scale;
        return new MixedContents(
            pressure_Pa, liquid_kg, volume_m3 - space_m3,
            new GasMasses(part[0] * shares[0].Vapour_kg_m3, part[1] * shares[1].Vapour_kg_m3, part[2] * shares[2].Vapour_kg_m3).Parts(),
            new GasMasses(part[0] * shares[0].Round_kg_m3, part[1] * shares[1].Round_kg_m3, part[2] * shares[2].Round_kg_m3).Parts(),
            density_kg_m3, enthalpy_J_kg, enthalpy_J_kg - energyByMass_J_kg, capacity_J_K, energy_J,
            (pressureByMass - pressure_Pa * scaleByMass) / scale);
    }

    /// <summary>How one species divides between the phases: m g(q) of the volume, with g = (q + B (1 − q))/(C (1 − q) + ρ″ q).</summary>
    private readonly struct Share
    {
        private readonly double _liquid;

        public Share(double mass_kg, double round_kg_m3, in SaturatedPhases phases)
        {
            Mass_kg = mass_kg;
            Round_kg_m3 = round_kg_m3;
            Vapour_kg_m3 = 1 / phases.VapourVolume_m3_kg;
            _liquid = round_kg_m3 * phases.LiquidVolume_m3_kg;
            Fall = Round_kg_m3 - Vapour_kg_m3;
            Slope = Round_kg_m3 - Vapour_kg_m3 * _liquid;
        }

        public double Mass_kg { get; }

        /// <summary>C: the molar mass at the round molar density. [kg/m³]</summary>
        public double Round_kg_m3 { get; }

        /// <summary>ρ″. [kg/m³]</summary>
        public double Vapour_kg_m3 { get; }

        /// <summary>C − ρ″. [kg/m³]</summary>
        public double Fall { get; }

        /// <summary>g′ times the square of <see cref="Density"/>. [kg/m³]</summary>
        public double Slope { get; }

        /// <summary>Where <see cref="Density"/> is zero; q stays below.</summary>
        public double Pole => Round_kg_m3 / Fall;

        public double Density(double q) => Round_kg_m3 - Fall * q;

        public double Filled(double q) => q + _liquid * (1 - q);
    }
}
