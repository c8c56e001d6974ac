using Microsoft.AspNetCore.Components;
using Slowglow.Workshop.Words;

namespace Slowglow.Web.Bench;

/// <summary>A piece of the bench page: says the program's sentences in the shop's words.</summary>
public abstract class BenchComponent : ComponentBase
{
    [CascadingParameter]
    protected TradeWords Words { get; set; }

    protected string Say(string sentence) => WordChoice.Say(sentence, Words);
}
