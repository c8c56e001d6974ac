using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Slowglow.Bench.People;

namespace Slowglow.Web.People;

/// <summary>Tells the use cases who pressed the button. Whoever signed out meanwhile is nobody.</summary>
internal sealed class PersonAtThePage(AuthenticationStateProvider state, ShopPeople people) : CircuitHandler
{
    private string? token;

    public override async Task OnCircuitOpenedAsync(Circuit circuit, CancellationToken cancellationToken) =>
        token = SignedIn.TokenOf((await state.GetAuthenticationStateAsync()).User);

    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(
        Func<CircuitInboundActivityContext, Task> next
    ) =>
        async context =>
        {
            Someone.Name = token is null ? null : await people.WhoAsync(token);
            await next(context);
        };
}
