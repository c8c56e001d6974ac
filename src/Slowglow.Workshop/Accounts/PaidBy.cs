namespace Slowglow.Workshop.Accounts;

public enum PaidBy
{
    Cash,
    Card,
    Transfer,
    Cheque,
    Other,
}
