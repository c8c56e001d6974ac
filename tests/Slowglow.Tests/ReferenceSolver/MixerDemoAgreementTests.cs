using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>The demo's saltmarsh-lm2.</summary>
public sealed class MixerDemoAgreementTests(ITestOutputHelper output)
    : DemoAgreementTests(output, "saltmarsh-lm2", 1502, 0.003, 1e-14);
