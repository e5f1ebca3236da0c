using ColdSim.Model.Electrical;
using Xunit;

namespace ColdSim.Tests.Model.Electrical;

public class LeadAcidRestVoltageTests
{
    [Fact]
    public void Voltage_rises_with_charge_and_is_held_at_the_ends()
    {
        Assert.Equal(11.89, LeadAcidRestVoltage.AtCharge_V(-0.1), 9);
        Assert.Equal(12.345, LeadAcidRestVoltage.AtCharge_V(0.625), 9);
        Assert.Equal(12.65, LeadAcidRestVoltage.AtCharge_V(1.2), 9);
        for (double charge = 0.01; charge <= 1; charge += 0.01)
            Assert.True(LeadAcidRestVoltage.AtCharge_V(charge) > LeadAcidRestVoltage.AtCharge_V(charge - 0.01));
    }

    // The rule and the specific gravities are of other sources than the table of voltages.
    [Fact, Outside("Open-circuit voltage of a lead-acid cell", Field.Electrical)]
    public void Voltage_is_that_of_specific_gravity_plus_0_84_a_cell_within_its_error()
    {
        double squares = 0;
        for (int quarter = 0; quarter <= 4; quarter++)
        {
            double charge = 0.25 * quarter, off_V = LeadAcidRestVoltage.AtCharge_V(charge) - 6 * (LeadAcidFreezing.SpecificGravity(charge) + 0.84);
            Assert.InRange(off_V, 0, 0.14);
            squares += off_V * off_V / 5;
        }

        Assert.InRange(Math.Sqrt(squares), 0, LeadAcidRestVoltage.Error_V);
    }
}
