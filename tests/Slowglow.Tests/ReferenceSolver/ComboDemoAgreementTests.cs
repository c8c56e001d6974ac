using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>The demo's kittiwake-15. With a smaller leak the reference cannot start in some of its worlds.</summary>
public sealed class ComboDemoAgreementTests(ITestOutputHelper output)
    : DemoAgreementTests(output, "kittiwake-15", 1501, 0.008, 1e-12);
