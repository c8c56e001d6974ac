using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>The demo's heronsgate-m60.</summary>
public sealed class MonitorAmplifierDemoAgreementTests(ITestOutputHelper output)
    : DemoAgreementTests(output, "heronsgate-m60", 1503, 0.003, 1e-14);
