using ColdSim.Model.Numerics;

namespace ColdSim.Model.Engine;

/// <summary>Integrals of the flows over a step [J, kg], or the flows themselves [W, kg/s].</summary>
/// <remarks>In one row, as a state is: they are integrated with the same weights, so that the ledger closes to the last digits.</remarks>
internal sealed class StepIntegrals
{
    private const int FirstPlace = 12;

    private readonly int _places;

    /// <summary>All of them at zero.</summary>
    /// <param name="places">Number of gas consumers.</param>
    public StepIntegrals(int places)
    {
        _places = places;
        Values = new double[WeightedSum.Padded(FirstPlace + places)];
    }

    /// <summary>The row.</summary>
    public double[] Values { get; }

    /// <summary>Gas that each appliance took.</summary>
    public Span<double> Taken_kg => Values.AsSpan(FirstPlace, _places);

    /// <summary>Vapour drawn from the cylinders.</summary>
    public double Drawn_kg { get => Values[0]; set => Values[0] = value; }

    /// <summary>Heat into the cylinders.</summary>
    public double CylinderHeat_J { get => Values[1]; set => Values[1] = value; }

    /// <summary>Enthalpy that left with the vapour.</summary>
    public double VapourEnthalpy_J { get => Values[2]; set => Values[2] = value; }

    /// <summary>Gas burnt.</summary>
    public double Burnt_kg { get => Values[3]; set => Values[3] = value; }

    /// <summary>Gas that passed an open valve without a flame.</summary>
    public double Unburnt_kg { get => Values[4]; set => Values[4] = value; }

    /// <summary>Its heat of combustion beyond that of as much propane; 0 for propane.</summary>
    public double UnburntBeyondPropane_J { get => Values[5]; set => Values[5] = value; }

    /// <summary>Burners' heat into the coach.</summary>
    public double Useful_J { get => Values[6]; set => Values[6] = value; }

    /// <summary>Burners' heat up the flue.</summary>
    public double Flue_J { get => Values[7]; set => Values[7] = value; }

    /// <summary>Sun, people and things.</summary>
    public double Gains_J { get => Values[8]; set => Values[8] = value; }

    /// <summary>Heat to outside air.</summary>
    public double Loss_J { get => Values[9]; set => Values[9] = value; }

    /// <summary>Heat to the ground.</summary>
    public double Ground_J { get => Values[10]; set => Values[10] = value; }

    /// <summary>Gas that flows, per mass of propane that would, over time. [s]</summary>
    public double MassFactor_s { get => Values[11]; set => Values[11] = value; }
}

/// <summary>One integral by name.</summary>
internal enum IntegralKind
{
    /// <summary>None of them.</summary>
    None,

    /// <summary>Vapour drawn from the cylinder.</summary>
    Drawn,

    /// <summary>Heat into the cylinder.</summary>
    CylinderHeat,

    /// <summary>Enthalpy leaving with the vapour.</summary>
    VapourEnthalpy,

    /// <summary>Gas burnt.</summary>
    Burnt,

    /// <summary>Burners' heat into the coach.</summary>
    Useful,

    /// <summary>Burners' heat up the flue.</summary>
    Flue,

    /// <summary>Sun, people and things.</summary>
    Gains,

    /// <summary>Heat to outside air.</summary>
    Loss,

    /// <summary>Heat to the ground.</summary>
    Ground,

    /// <summary>Electricity from the panels.</summary>
    Solar,

    /// <summary>Electricity through the converter.</summary>
    Converter,

    /// <summary>Electricity to all loads.</summary>
    Load,

    /// <summary>Electricity lost in the battery.</summary>
    BatteryLoss,
}

/// <summary>Integrals of the 12 V side over a step. [J]</summary>
/// <param name="Solar_J">From the panels.</param>
/// <param name="Converter_J">Through the converter.</param>
/// <param name="Load_J">To all loads.</param>
/// <param name="Loss_J">Lost in charging, and by Peukert's law in giving.</param>
/// <param name="Stored_J">Charge at its end.</param>
internal readonly record struct PowerIntegrals(double Solar_J, double Converter_J, double Load_J, double Loss_J, double Stored_J);
