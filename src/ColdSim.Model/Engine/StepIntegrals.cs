namespace ColdSim.Model.Engine;

/// <summary>Integrals of the flows over a step. [J, kg]</summary>
/// <param name="appliances">Number of gas consumers.</param>
internal sealed class StepIntegrals(int appliances)
{
    /// <summary>Vapour drawn from the cylinders.</summary>
    public double Drawn_kg { get; set; }

    /// <summary>Gas that each appliance took.</summary>
    public double[] Taken_kg { get; } = new double[appliances];

    /// <summary>Heat into the cylinders.</summary>
    public double CylinderHeat_J { get; set; }

    /// <summary>Enthalpy that left with the vapour.</summary>
    public double VapourEnthalpy_J { get; set; }

    /// <summary>Gas burnt.</summary>
    public double Burnt_kg { get; set; }

    /// <summary>Gas that passed an open valve without a flame.</summary>
    public double Unburnt_kg { get; set; }

    /// <summary>Its heat of combustion beyond that of as much propane; 0 for propane.</summary>
    public double UnburntBeyondPropane_J { get; set; }

    /// <summary>Burners' heat into the coach.</summary>
    public double Useful_J { get; set; }

    /// <summary>Burners' heat up the flue.</summary>
    public double Flue_J { get; set; }

    /// <summary>Sun, people and things.</summary>
    public double Gains_J { get; set; }

    /// <summary>Heat to outside air.</summary>
    public double Loss_J { get; set; }

    /// <summary>Heat to the ground.</summary>
    public double Ground_J { get; set; }

    /// <summary>Sets all integrals to zero.</summary>
    public void Clear()
    {
        Taken_kg.AsSpan().Clear();
        Drawn_kg = CylinderHeat_J = VapourEnthalpy_J = Burnt_kg = Unburnt_kg = UnburntBeyondPropane_J = Useful_J = Flue_J = Gains_J = Loss_J = Ground_J = 0;
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
