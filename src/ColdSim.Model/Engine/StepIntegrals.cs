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
    public double Drawn_kg => Values[0];

    /// <summary>Heat into the cylinders.</summary>
    public double CylinderHeat_J => Values[1];

    /// <summary>Enthalpy that left with the vapour.</summary>
    public double VapourEnthalpy_J => Values[2];

    /// <summary>Gas burnt.</summary>
    public double Burnt_kg => Values[3];

    /// <summary>Gas that passed an open valve without a flame.</summary>
    public double Unburnt_kg => Values[4];

    /// <summary>Its heat of combustion beyond that of as much propane; 0 for propane.</summary>
    public double UnburntBeyondPropane_J => Values[5];

    /// <summary>Burners' heat into the coach.</summary>
    public double Useful_J => Values[6];

    /// <summary>Burners' heat up the flue.</summary>
    public double Flue_J => Values[7];

    /// <summary>Sun, people and things.</summary>
    public double Gains_J => Values[8];

    /// <summary>Heat to outside air.</summary>
    public double Loss_J => Values[9];

    /// <summary>Heat to the ground.</summary>
    public double Ground_J => Values[10];

    /// <summary>Gas that flows, per mass of propane that would, over time. [s]</summary>
    public double MassFactor_s => Values[11];

    /// <summary>Sets all but what each appliance took, in the order above; as flows, of heat in watts.</summary>
    /// <param name="drawn">Vapour drawn.</param>
    /// <param name="cylinderHeat">Heat into the cylinders.</param>
    /// <param name="vapourEnthalpy">Enthalpy that leaves with the vapour.</param>
    /// <param name="burnt">Gas burnt.</param>
    /// <param name="unburnt">Gas that passes without a flame.</param>
    /// <param name="unburntBeyondPropane">Its heat of combustion beyond that of as much propane.</param>
    /// <param name="useful">Burners' heat into the coach.</param>
    /// <param name="flue">Burners' heat up the flue.</param>
    /// <param name="gains">Sun, people and things.</param>
    /// <param name="loss">Heat to outside air.</param>
    /// <param name="ground">Heat to the ground.</param>
    /// <param name="massFactor">Gas that flows, per mass of propane that would.</param>
    public void Set(
        double drawn, double cylinderHeat, double vapourEnthalpy, double burnt, double unburnt, double unburntBeyondPropane, double useful, double flue, double gains,
        double loss, double ground, double massFactor)
    {
        // From the last place down, so that one check of the row's length does for all.
        Span<double> row = Values;
        row[11] = massFactor;
        row[10] = ground;
        row[9] = loss;
        row[8] = gains;
        row[7] = flue;
        row[6] = useful;
        row[5] = unburntBeyondPropane;
        row[4] = unburnt;
        row[3] = burnt;
        row[2] = vapourEnthalpy;
        row[1] = cylinderHeat;
        row[0] = drawn;
    }
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
