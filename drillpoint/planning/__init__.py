"""From a used drill to a plan for it: what to do, how much comes off, how to set the wheel, what to check afterwards.

A plan rests on the book of relations and the ground point. Each of its thresholds is a shop's choice and says whose.
"""

from drillpoint.planning.plan import RegrindPlan, plan_regrind
from drillpoint.planning.shop import Shop
from drillpoint.planning.used_drill import Job, Wear

STATED = (Shop, Wear, Job)

__all__ = ["STATED", "Job", "RegrindPlan", "Shop", "Wear", "plan_regrind"]
