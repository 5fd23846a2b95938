"""The lessons are opened in a real JupyterLab."""

from tests.jupyterlab import jupyterlab

__all__ = ["jupyterlab"]
