using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>Lane functions against the framework's scalar ones.</summary>
public sealed class LaneFunctionTests
{
    public static TheoryData<double> Arguments() =>
        [-745, -300, -40, -36, -10, -2, -1, -0.3, 0, 1e-6, 0.3, 0.999, 1, 1.001, 2, 10, 40, 500, 1e6];

    [Theory]
    [MemberData(nameof(Arguments))]
    public void Omega_solves_its_equation(double z)
    {
        var w = Lanes.Omega(Vector256.Create(z)).GetElement(0);
        if (z > -700)
        {
            Assert.Equal(z, w + Math.Log(w), 1e-12 * Math.Max(1, Math.Abs(z)));
        }
        else
        {
            Assert.InRange(w, 0, 1e-300);
        }
    }

    [Theory]
    [MemberData(nameof(Arguments))]
    public void Arc_tangent_is_within_its_stated_error(double x)
    {
        if (x >= 0)
        {
            Assert.Equal(Math.Atan(x), Lanes.ArcTan(Vector256.Create(x)).GetElement(0), 2e-8);
        }
    }

    [Theory]
    [MemberData(nameof(Arguments))]
    public void Soft_plus_and_hyperbolic_tangent_agree(double x)
    {
        if (Math.Abs(x) < 500)
        {
            var exact = x > 30 ? x : Math.Log(1 + Math.Exp(x));
            Assert.Equal(exact, Lanes.SoftPlus(Vector256.Create(x), out var slope).GetElement(0), (1e-12 * Math.Abs(x)) + 1e-13);
            Assert.Equal(1 / (1 + Math.Exp(-x)), slope.GetElement(0), 1e-12);
            Assert.Equal(Math.Tanh(x), Lanes.Tanh(Vector256.Create(x), out _).GetElement(0), 1e-12);
        }
    }
}
