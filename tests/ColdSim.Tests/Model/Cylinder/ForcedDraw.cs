using ColdSim.Model.Cylinder;

namespace ColdSim.Tests.Model.Cylinder;

/// <summary>A draw that asks nobody: vapour leaves at a steady rate while heat flows in by a law given, from the bare equations.</summary>
internal static class ForcedDraw
{
    /// <summary>Mass and temperature after a time, by classical Runge-Kutta.</summary>
    /// <param name="body">The cylinder.</param>
    /// <param name="mass_kg">Propane at the start. [kg]</param>
    /// <param name="t_K">Temperature at the start. [K]</param>
    /// <param name="draw_kg_s">Vapour drawn. [kg/s]</param>
    /// <param name="heat_W">Heat from outside at a temperature. [W]</param>
    /// <param name="time_s">How long. [s]</param>
    /// <param name="steps">Steps to take.</param>
    public static Drawn After(
        CylinderBody body, double mass_kg, double t_K, double draw_kg_s, Func<double, double> heat_W, double time_s, int steps)
    {
        double h = time_s / steps, heat_J = 0, enthalpy_J = 0;
        for (int i = 0; i < steps; i++)
        {
            (double k1, double q1, double e1) = Rate(mass_kg, t_K);
            (double k2, double q2, double e2) = Rate(mass_kg - 0.5 * h * draw_kg_s, t_K + 0.5 * h * k1);
            (double k3, double q3, double e3) = Rate(mass_kg - 0.5 * h * draw_kg_s, t_K + 0.5 * h * k2);
            (double k4, double q4, double e4) = Rate(mass_kg - h * draw_kg_s, t_K + h * k3);
            mass_kg -= h * draw_kg_s;
            t_K += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            heat_J += h / 6 * (q1 + 2 * q2 + 2 * q3 + q4);
            enthalpy_J += h / 6 * (e1 + 2 * e2 + 2 * e3 + e4);
        }

        return new Drawn(mass_kg, t_K, heat_J, enthalpy_J);

        (double Warming_K_s, double Heat_W, double Enthalpy_W) Rate(double m_kg, double at_K)
        {
            CylinderContents contents = body.Contents(m_kg, at_K);
            double q = heat_W(at_K);
            return (body.Warming_K_s(contents, q, draw_kg_s), q, draw_kg_s * contents.VapourEnthalpy_J_kg);
        }
    }
}

/// <summary>Where a forced draw ended, and what crossed the border on the way.</summary>
internal readonly record struct Drawn(double Mass_kg, double T_K, double Heat_J, double Enthalpy_J);
