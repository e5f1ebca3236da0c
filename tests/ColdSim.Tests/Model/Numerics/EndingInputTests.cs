using ColdSim.Model.Numerics;
using CsCheck;
using Xunit;

namespace ColdSim.Tests.Model.Numerics;

public class EndingInputTests
{
    private const int Slices = 20_000;

    [Fact]
    public void An_input_that_ends_within_a_step_keeps_its_first_four_moments()
        => Gen.Select(Gen.Double[0, 1], Gen.Int[0, 3]).Sample((part, power) =>
        {
            EndingInput input = new(part);
            double moment = 0;
            for (int i = 0; i < Slices; i++)
            {
                double x = (i + 0.5) / Slices;
                moment += input.At(x) * Math.Pow(x, power) / Slices;
            }

            Assert.Equal(Math.Pow(part, power + 1) / (power + 1), moment, 1e-7);
        });

    // What decays with the step's longest part of a time constant, three quarters.
    [Fact]
    public void What_is_left_of_it_at_the_steps_end_is_right_to_a_few_parts_in_ten_thousand()
        => Gen.Double[0, 1].Sample(part =>
        {
            EndingInput input = new(part);
            const double decay = 0.75;
            double left = 0;
            for (int i = 0; i < Slices; i++)
            {
                double x = (i + 0.5) / Slices;
                left += input.At(x) * Math.Exp(-decay * (1 - x)) / Slices;
            }

            Assert.Equal((Math.Exp(-decay * (1 - part)) - Math.Exp(-decay)) / decay, left, 3e-4);
        });

    [Fact]
    public void One_that_lasts_for_the_whole_step_is_constant()
    {
        EndingInput input = new(1);
        Assert.Equal(1, input.At(0), 1e-14);
        Assert.Equal(1, input.At(0.3), 1e-14);
        Assert.Equal(1, input.At(1), 1e-14);
    }
}
